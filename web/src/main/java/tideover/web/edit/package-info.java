/** The one edit path: forms, cells, pastes, drags, undo and programs all end in a list of edits on a base revision. */
@NullMarked
package tideover.web.edit;

import org.jspecify.annotations.NullMarked;
