/**
 * Overload of conductors: design current, rated current and ampacity, in the mode in which most flows. Rules after
 * IEC 60364-4-43 (433) and IEC 60364-5-52 as the rule book cites them.
 */
@NullMarked
package tideover.engine.protection.overload;

import org.jspecify.annotations.NullMarked;
