package tideover.web.network;

import java.util.List;
import tideover.web.diagram.StateLink;
import tideover.web.page.Frame;

/**
 * What flows in one state.
 *
 * @param address   of the site
 * @param state     as addresses write it
 * @param states    that may be shown instead
 * @param sentences what flows, the most important first
 * @param change    what the loads turned off change; empty where nobody chose
 * @param loads     circuits that may be turned on or off
 * @param all       address with all of them on
 * @param here      address of what is shown
 * @param svg       the diagram with what flows at each thing; empty where nothing was studied
 * @param label     of the diagram
 * @param heads     of the columns of places
 * @param places    what stands and flows at each
 * @param starts    how motors start, sentence by sentence, with sign and look
 * @param worst     the worst faults, each as a story
 * @param faults    all faults
 * @param missing   facts without which some of it is not known
 */
public record NetworkSheet(
        Frame frame,
        String address,
        String state,
        List<StateLink> states,
        List<String> sentences,
        List<String> change,
        List<Load> loads,
        String all,
        String here,
        String svg,
        String label,
        List<String> heads,
        List<Place> places,
        List<Start> starts,
        List<String> worst,
        List<FaultRow> faults,
        List<Missing> missing) {
    public NetworkSheet {
        states = List.copyOf(states);
        sentences = List.copyOf(sentences);
        change = List.copyOf(change);
        loads = List.copyOf(loads);
        heads = List.copyOf(heads);
        places = List.copyOf(places);
        starts = List.copyOf(starts);
        worst = List.copyOf(worst);
        faults = List.copyOf(faults);
        missing = List.copyOf(missing);
    }

    /** What the form offers, for it says nothing of what is not ticked. */
    public String offered() {
        return String.join(",", loads.stream().map(Load::id).toList());
    }

    /**
     * A circuit that draws.
     *
     * @param draws on which lines and how much, worded
     * @param on    {@code on}, or empty
     */
    public record Load(String id, String name, String draws, String on) {}

    /**
     * A place with what stands and flows there.
     *
     * @param address where more of it is told
     * @param numbers one for each column; empty where there is nothing
     */
    public record Place(String name, String address, List<String> numbers) {
        public Place {
            numbers = List.copyOf(numbers);
        }
    }

    /**
     * How one motor starts.
     *
     * @param address of the finding
     */
    public record Start(String look, String outcome, String name, String sentence, String address) {}

    /**
     * One fault between like conductors at one place.
     *
     * @param place    empty where it is that of the row before
     * @param address  where its story is told
     * @param between  which conductors
     * @param smallest current
     * @param largest  current
     * @param touch    voltage on exposed parts
     * @param ends     when and by what for certain
     */
    public record FaultRow(
            String place, String address, String between, String smallest, String largest, String touch, String ends) {}

    /**
     * Facts that one errand brings.
     *
     * @param words what is to be done
     */
    public record Missing(String words, List<Fact> facts) {
        public Missing {
            facts = List.copyOf(facts);
        }
    }

    /**
     * A fact.
     *
     * @param address where it is written down
     */
    public record Fact(String words, String address) {}
}
