/** The one-line diagram: in each operating state, every thing in it a way to its facts. */
@NullMarked
package tideover.web.diagram;

import org.jspecify.annotations.NullMarked;
