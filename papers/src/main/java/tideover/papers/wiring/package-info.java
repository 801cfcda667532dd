/**
 * Wiring lists in words: each part of them as one listing of plain cells, which the command line prints as text, CSV or
 * JSON and the papers print as tables. A further part is one more {@link tideover.papers.wiring.WiringPart}.
 *
 * <p>No formulas live here; what the lists say is computed in {@code tideover.engine.wiring.schedule}. They hold in every
 * mode.
 */
@NullMarked
package tideover.papers.wiring;

import org.jspecify.annotations.NullMarked;
