/**
 * The sites as a whole: the list of them, the first visit to a new one, files that come and go, and what is done with a
 * site beside working on it.
 */
@NullMarked
package tideover.web.sites;

import org.jspecify.annotations.NullMarked;
