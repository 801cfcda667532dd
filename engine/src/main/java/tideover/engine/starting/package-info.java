/**
 * Starts of motors, and what happens when the voltage comes back: currents on each line of the sources beside what they
 * can give for that long, voltages at the boards, an order in which everything can be switched on.
 *
 * <p>Currents are added at nominal voltage with their power factors, which is the safe side: behind a cable a motor that
 * does not turn yet draws less. Dips come from the flow of the house with the motor as an impedance (IEC 60034-12: current
 * with locked rotor is proportional to the voltage). Starting multiples are handed in, each with its source.
 */
@NullMarked
package tideover.engine.starting;

import org.jspecify.annotations.NullMarked;
