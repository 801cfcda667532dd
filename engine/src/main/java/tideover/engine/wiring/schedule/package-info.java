/**
 * Wiring lists of a site: each conductor of the power wiring that the job touches and each core of the control wiring, from
 * terminal to terminal; and what follows from these rows: what to cut, what to label, what parts it takes, and where what
 * was built differs from the plan.
 *
 * <p>Holds in every mode: the lists tell how things are joined, not where contacts stand. Rows are read off the netlist;
 * nothing is judged here. Designations of power conductors are ours, letters after IEC 81346-2: WD power, WE earth; colours
 * are coded after IEC 60757, ferrules after DIN 46228-4.
 */
@NullMarked
package tideover.engine.wiring.schedule;

import org.jspecify.annotations.NullMarked;
