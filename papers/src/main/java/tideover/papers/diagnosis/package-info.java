/**
 * The fault call in words: which mistakes fit what was seen and what to read next, and the short trees for what callers mostly
 * have, filled with the facts of the house.
 *
 * <p>No formulas live here; what fits is worked out in {@code tideover.engine.wiring.diagnosis}. It holds in every mode.
 */
@NullMarked
package tideover.papers.diagnosis;

import org.jspecify.annotations.NullMarked;
