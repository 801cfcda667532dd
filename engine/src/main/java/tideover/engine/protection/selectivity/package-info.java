/**
 * Which of several overcurrent devices in series opens first: at each current that flows when connected, and while
 * islanded, where the source may stop before any of them.
 *
 * <p>Bands of time and current are those of IEC 60898-1, IEC 60947-2 and IEC 60269, earliest and latest; what is faster
 * than they can say goes by let-through energy against the energy that the device before certainly holds. Makers' tables
 * of selectivity are not known here: nothing is claimed that only they could show. Terms follow IEC 60364-5-53, 536.
 */
@NullMarked
package tideover.engine.protection.selectivity;

import org.jspecify.annotations.NullMarked;
