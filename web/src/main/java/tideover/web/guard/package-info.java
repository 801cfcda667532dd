/**
 * Who may come in: whoever brings the start address of this run, or the key in the private data folder. The machine's other
 * accounts reach the same port, and any page in the same browser may send requests to it: so host, origin, cookie and form
 * token are all looked at.
 */
@NullMarked
package tideover.web.guard;

import org.jspecify.annotations.NullMarked;
