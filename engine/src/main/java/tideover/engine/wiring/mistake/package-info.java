/**
 * Every single mistake a person could make while wiring this house, and every single failure of a switching device,
 * enumerated from terminals and cores; which commissioning step reveals which; which remain unseen and what they lead to.
 *
 * <p>One mistake at a time: the single-fault assumption of test theory. Kinds of mistake follow Kautz, IEEE Trans.
 * Computers C-23(4), 1974 (opens, shorts, exchanged wires) and the practice of the trade (wrong neutral bar, forgotten
 * bridge, second link, wrong number, wrong setting).
 */
@NullMarked
package tideover.engine.wiring.mistake;

import org.jspecify.annotations.NullMarked;
