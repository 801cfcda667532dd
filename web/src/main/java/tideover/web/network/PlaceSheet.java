package tideover.web.network;

import java.util.List;
import tideover.web.diagram.StateLink;
import tideover.web.network.NetworkSheet.FaultRow;
import tideover.web.network.NetworkSheet.Missing;
import tideover.web.page.Frame;

/**
 * What stands, flows and happens on a fault at one place in one state.
 *
 * @param address  of the site
 * @param back     address of all places in this state
 * @param id       of the place
 * @param name     of the place
 * @param facts    address of its facts
 * @param findings address of its findings
 * @param states   that may be shown instead
 * @param heads    of the columns
 * @param numbers  what stands and flows; empty where it has no voltage
 * @param stories  each fault told
 * @param faults   the same as a table
 * @param state    as addresses write it
 * @param faultOhm resistance of the faults, as it was typed
 * @param problem  what is wrong with that; empty for nothing
 * @param curves   time–current sheet, an SVG element; empty where there is none
 * @param label    of that sheet
 * @param file     address of the sheet as a file; empty where there is none
 * @param missing  facts without which some of it is not known
 */
public record PlaceSheet(
        Frame frame,
        String address,
        String back,
        String id,
        String name,
        String facts,
        String findings,
        List<StateLink> states,
        List<String> heads,
        List<String> numbers,
        List<String> stories,
        List<FaultRow> faults,
        String state,
        String faultOhm,
        String problem,
        String curves,
        String label,
        String file,
        List<Missing> missing) {
    public PlaceSheet {
        states = List.copyOf(states);
        heads = List.copyOf(heads);
        numbers = List.copyOf(numbers);
        stories = List.copyOf(stories);
        faults = List.copyOf(faults);
        missing = List.copyOf(missing);
    }
}
