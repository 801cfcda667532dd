/** How a site became what it is: its revisions in words, the difference of any two, the way back to each. */
@NullMarked
package tideover.web.history;

import org.jspecify.annotations.NullMarked;
