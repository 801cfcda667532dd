/** Findings as notes in the margin: what is so, where, against which limit, and the ways out. */
@NullMarked
package tideover.web.note;

import org.jspecify.annotations.NullMarked;
