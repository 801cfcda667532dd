@NullMarked
package tideover.command;

import org.jspecify.annotations.NullMarked;
