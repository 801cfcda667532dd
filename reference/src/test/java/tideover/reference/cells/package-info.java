/** What people type and paste, held against the words printed and the fields as they are. */
@NullMarked
package tideover.reference.cells;

import org.jspecify.annotations.NullMarked;
