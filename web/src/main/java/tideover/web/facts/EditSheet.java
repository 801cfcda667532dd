package tideover.web.facts;

import java.util.List;
import java.util.Map;
import tideover.web.edit.Outcome;
import tideover.web.page.Frame;

/**
 * A change that was not taken, with what had been typed.
 *
 * @param address of the site
 * @param base    number of the revision
 * @param back    the page it came from
 * @param hidden  what else the form said
 * @param facts   what was to be changed
 * @param last    why it was not
 */
public record EditSheet(
        Frame frame,
        String address,
        long base,
        String back,
        Map<String, String> hidden,
        List<Wanted> facts,
        Outcome last) {
    public EditSheet {
        hidden = Map.copyOf(hidden);
        facts = List.copyOf(facts);
    }

    /**
     * One fact that was to be changed.
     *
     * @param path    of the edit
     * @param was     what stood there
     * @param typed   what was typed
     * @param label   what it is called
     * @param problem what is wrong with it; empty where nothing is
     */
    public record Wanted(String path, String was, String typed, String label, String problem) {}
}
