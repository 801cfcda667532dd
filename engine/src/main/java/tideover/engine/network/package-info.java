/**
 * Conductors and what they carry: resistance, ampacity, protective conductors, short-time heating.
 *
 * <p>Holds in every operating state: a conductor does not know which source feeds it. Formulas and tables come from
 * IEC 60228 (resistance), IEC 60364-5-52 (ampacity and its corrections), IEC 60364-5-54 (protective conductors) and
 * IEC 60364-4-43 (short-time heating); the rows themselves are handed in, each with its source.
 */
@NullMarked
package tideover.engine.network;

import org.jspecify.annotations.NullMarked;
