package tideover.papers.terminals;

import java.util.List;
import tideover.engine.site.ThingId;

/**
 * A device with its terminals.
 *
 * @param tag     short name, as labels bear it
 * @param name    printed name
 * @param power   rows of the power terminals, grid side left and island side right
 * @param control rows of the control terminals, port by port
 * @param sides   whether the double line runs through it
 */
record Device(ThingId id, String tag, String name, List<Row> power, List<Row> control, Sides sides) {

    /** What its two edges are. */
    enum Sides {
        /** Grid side and island side: the double line runs through it. */
        GRID_AND_ISLAND,
        /** Where it is fed, and what it feeds. */
        FED_AND_FEEDS,
        /** Nothing to tell apart. */
        NONE
    }

    Device {
        power = List.copyOf(power);
        control = List.copyOf(control);
    }
}
