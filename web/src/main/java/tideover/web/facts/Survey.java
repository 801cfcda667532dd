package tideover.web.facts;

import java.util.List;
import tideover.web.edit.Outcome;
import tideover.web.facts.FactRow.Choice;
import tideover.web.page.Frame;

/**
 * What is to be asked and looked at.
 *
 * @param address of the site
 * @param base    number of the revision
 * @param lead    how far it is, in a sentence
 * @param first   facts that set the price and are not known, the heaviest first
 * @param known   those that are known
 * @param others  all things, kind by kind
 * @param kinds   of which things may be added
 * @param origins who may say so
 * @param last    what came of the last change
 */
public record Survey(
        Frame frame,
        String address,
        long base,
        String lead,
        List<Item> first,
        List<Item> known,
        List<Kind> others,
        List<Choice> kinds,
        List<Choice> origins,
        Outcome last) {
    public Survey {
        first = List.copyOf(first);
        known = List.copyOf(known);
        others = List.copyOf(others);
        kinds = List.copyOf(kinds);
        origins = List.copyOf(origins);
    }

    /**
     * One fact of the survey.
     *
     * @param row      the fact
     * @param field    where it is changed: in the house, or in the plan where only that knows the thing
     * @param thing    whose fact, as printed
     * @param sheet    address of all facts of that thing
     * @param waiting  how many open findings wait for it, worded; empty where none does
     * @param origin   who is suggested to say so
     * @param fresh    said when it was just saved; empty else
     */
    public record Item(
            FactRow row,
            FactRow.Field field,
            String thing,
            String sheet,
            String waiting,
            String origin,
            String fresh) {}

    /** Things of one kind. */
    public record Kind(String name, List<ThingLink> things) {
        public Kind {
            things = List.copyOf(things);
        }
    }

    /**
     * One thing.
     *
     * @param name    as printed
     * @param address of its facts
     * @param status  what becomes of it, worded; empty where it stays as it is
     * @param open    what is missing or assumed of it, worded; empty where nothing is
     */
    public record ThingLink(String name, String address, String status, String open) {}
}
