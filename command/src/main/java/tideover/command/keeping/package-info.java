/**
 * Commands on kept sites. Who owns the data folder answers them: this process, or the workbench that runs; nobody who types
 * them has to know which. No formulas.
 */
@NullMarked
package tideover.command.keeping;

import org.jspecify.annotations.NullMarked;
