/**
 * Overload of conductors and the sections of protective conductors: design current, rated current and ampacity, in the
 * mode in which most flows. Rules after IEC 60364-4-43 (433), IEC 60364-5-52 and IEC 60364-5-54 as the rule book cites
 * them.
 */
@NullMarked
package tideover.engine.protection.overload;

import org.jspecify.annotations.NullMarked;
