package tideover.engine.wiring.schedule;

import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;

/**
 * One end of a control core.
 *
 * @param terminal the port's terminal
 * @param device   device it is at; the port itself where nobody has stated the device
 * @param tag      short name of the device, as labels bear it
 */
public record ControlEnd(TerminalId terminal, ThingId device, String tag) {

    /** Device and terminal, as a label bears them: {@code TB1:X4:3}. */
    public String text() {
        return tag + ":" + terminal.name();
    }
}
