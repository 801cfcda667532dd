/** What every page has: wording in the reader's language, the frame around it, and what is shown when something is in the way. */
@NullMarked
package tideover.web.page;

import org.jspecify.annotations.NullMarked;
