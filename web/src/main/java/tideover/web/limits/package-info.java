/** The limits of the rule book that a site is judged by, topic by topic. */
@NullMarked
package tideover.web.limits;

import org.jspecify.annotations.NullMarked;
