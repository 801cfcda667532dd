/**
 * Commands on kept sites, and those that begin one. Whoever types them does not have to know who owns the data folder. No
 * formulas.
 */
@NullMarked
package tideover.command.keeping;

import org.jspecify.annotations.NullMarked;
