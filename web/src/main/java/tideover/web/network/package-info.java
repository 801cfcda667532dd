/** What flows in each operating state and what a fault does there: studied, worded and drawn, not judged here. */
@NullMarked
package tideover.web.network;

import org.jspecify.annotations.NullMarked;
