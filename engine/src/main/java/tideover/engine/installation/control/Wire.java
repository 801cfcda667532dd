package tideover.engine.installation.control;

import static java.util.Objects.requireNonNull;

import tideover.engine.site.ControlCable;
import tideover.engine.site.Core;
import tideover.engine.site.TerminalId;

/**
 * One connected core of a control cable.
 *
 * @param index    position in {@link ControlNet#wires()}
 * @param cable    cable it lies in
 * @param position place in the cable, counted from 0
 * @param core     the core; both its ends are known
 */
public record Wire(int index, ControlCable cable, int position, Core core) {

    /** Terminal at which it begins. */
    public TerminalId from() {
        return requireNonNull(core.from());
    }

    /** Terminal at which it ends. */
    public TerminalId to() {
        return requireNonNull(core.to());
    }

    /** The terminal at its other end. */
    public TerminalId other(TerminalId end) {
        return end.equals(from()) ? to() : from();
    }
}
