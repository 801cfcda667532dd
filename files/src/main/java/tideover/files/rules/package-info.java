/**
 * Rule books as YAML, and what lays them over one another: a country over IEC, an operator over the country, the user
 * over all.
 *
 * <p>A book declares for every topic whether it has limits of its own, takes those of IEC, leaves it to the grid operator
 * or knows nothing; a topic not covered has no limits. Each limit cites its document; no formulas live here.
 */
@NullMarked
package tideover.files.rules;

import org.jspecify.annotations.NullMarked;
