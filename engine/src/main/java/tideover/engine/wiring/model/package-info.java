/**
 * The wiring model: inverter, islanding switch, neutral–earth switch, meter and by-pass as a timed discrete machine on the
 * netlist, healthy or with one mistake; the hazards over all states it can reach; and what everything should read in each.
 *
 * <p>Contacts are open or closed, voltages are there or not. Times are those of the devices and of the inverter's settings.
 * The order of a changeover is that of IEC 60364-8-82 and IEC 63445: separate, prove it, earth the neutral, prove it, form
 * voltage; the return the other way round. What no fact tells is told in {@link tideover.engine.wiring.model.Timing}.
 */
@NullMarked
package tideover.engine.wiring.model;

import org.jspecify.annotations.NullMarked;
