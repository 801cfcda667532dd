/**
 * What is different between two sites, fact by fact, in the paths of {@link tideover.files.Edit}. No formulas of the trade.
 */
@NullMarked
package tideover.files.difference;

import org.jspecify.annotations.NullMarked;
