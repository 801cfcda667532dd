/** The circuits sheet: one table with the double line, the load of the lines above it, the margin beside it. */
@NullMarked
package tideover.web.circuits;

import org.jspecify.annotations.NullMarked;
