/**
 * Wording: one renderer of phrases, quantities and names for screen, command line and paper, and the console report.
 *
 * <p>{@link tideover.papers.Wording} turns the {@link tideover.engine.rules.Phrase}s of the engine into sentences by
 * message bundles; {@link tideover.papers.CheckReport} prints a judged site in a hundred columns. Drawings are in
 * {@code diagram}, documents in {@code handover}. Rounding is trade rounding: three figures that count, in the unit a
 * fitter says. No formulas live here; the findings hold in the states they name.
 */
@NullMarked
package tideover.papers;

import org.jspecify.annotations.NullMarked;
