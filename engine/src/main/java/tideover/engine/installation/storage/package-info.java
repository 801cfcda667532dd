/**
 * Batteries and what else feeds an island: where a battery stands, and whether generators on the a.c. side feed more than
 * battery and forming inverter take up.
 *
 * <p>Concerns the island with the grid dead; connected, the grid takes what is too much. No formulas but sums. Places go by
 * the rule books; the surplus by IEC 60364-5-551, 551.2, the makers' figures, and the reduction of power at rising
 * frequency of EN 50549-1.
 */
@NullMarked
package tideover.engine.installation.storage;

import org.jspecify.annotations.NullMarked;
