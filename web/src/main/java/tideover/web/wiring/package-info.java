/** The wiring of a site: its lists, the terminal drawing, what each state should read, and which mistakes would be seen. */
@NullMarked
package tideover.web.wiring;

import org.jspecify.annotations.NullMarked;
