/**
 * What is kept, as commands ask for it. Who owns the data folder answers: this process, or the workbench that runs. No
 * formulas.
 */
@NullMarked
package tideover.command.kept;

import org.jspecify.annotations.NullMarked;
