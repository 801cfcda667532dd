/** How the workbench starts, tells where it is, and stops. */
@NullMarked
package tideover.web.start;

import org.jspecify.annotations.NullMarked;
