/** What is handed over: what is still open before that, what goes into the file, and the making of the papers. */
@NullMarked
package tideover.web.handover;

import org.jspecify.annotations.NullMarked;
