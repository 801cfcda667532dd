/**
 * The time–current sheet of a circuit: all overcurrent devices from the grid to it on double logarithmic paper, with the
 * currents that can flow, the time a fault may last and what its cable bears.
 *
 * <p>One sheet of A4, drawn with the pens of all drawings. Bands are drawn as the standards guarantee them, from the earliest
 * to the latest opening, so that a point on the sheet is a point of the table. No formulas live here but those of the scales.
 */
@NullMarked
package tideover.papers.curves;

import org.jspecify.annotations.NullMarked;
