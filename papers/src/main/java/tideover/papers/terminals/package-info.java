/**
 * Terminal drawings: for each device of the cabinet a card with its terminals and where every conductor at them goes; and
 * for the whole cabinet the connections between its devices and the current paths of its control wiring.
 *
 * <p>Drawn from the rows of the wiring schedules, so that schedule and drawing give every conductor the same name. Cards
 * are set row by row; the two drawings of the whole are laid out by a layered layout. Symbols follow IEC 60617 (from
 * memory), contacts stand as at rest. Holds in every mode. No formulas live here.
 */
@NullMarked
package tideover.papers.terminals;

import org.jspecify.annotations.NullMarked;
