/**
 * Short circuits: whether devices break them, boards and conductors bear them, and what an island source does.
 *
 * <p>What devices must bear is asked of the largest current, while connected and with what inverters add; what must make
 * devices act of the smallest; while islanded the source sets the current. Rules after IEC 60364-4-43 (434 to 436),
 * IEC 60364-5-54 (543.1) and IEC 61439-3 as the rule book cites them. The heat of a fault is taken without loss, as the
 * adiabatic equation does for up to 5 s.
 */
@NullMarked
package tideover.engine.protection.shortcircuit;

import org.jspecify.annotations.NullMarked;
