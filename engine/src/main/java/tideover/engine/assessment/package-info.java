/**
 * The whole judgement of a site: resolves it, lets the studies compute and every check judge, and sums up.
 *
 * <p>Holds in all operating states. No formulas live here; those are in the studies of {@code network} and
 * {@code protection}.
 */
@NullMarked
package tideover.engine.assessment;

import org.jspecify.annotations.NullMarked;
