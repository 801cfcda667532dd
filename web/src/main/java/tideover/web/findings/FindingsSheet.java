package tideover.web.findings;

import java.util.List;
import tideover.web.note.Margin.Pending;
import tideover.web.note.Note;
import tideover.web.page.Frame;

/**
 * All findings of a site, or those asked for.
 *
 * @param address of the site
 * @param here    address of the page with what was asked for
 * @param base    number of the revision
 * @param verdict sentence of the whole
 * @param sign    of its outcome
 * @param look    end of the style of its outcome
 * @param counts  how many findings it sums up
 * @param filters ways to ask for less
 * @param asked   what was asked for, worded; empty where nothing was
 * @param groups  findings, what asks for most first
 * @param pending whether slow findings are still computed
 */
public record FindingsSheet(
        Frame frame,
        String address,
        String here,
        long base,
        String verdict,
        String sign,
        String look,
        String counts,
        List<Filter> filters,
        String asked,
        List<Group> groups,
        Pending pending) {
    public FindingsSheet {
        filters = List.copyOf(filters);
        groups = List.copyOf(groups);
    }

    /**
     * One way to ask for less.
     *
     * @param name what it goes by
     */
    public record Filter(String name, List<Choice> choices) {
        public Filter {
            choices = List.copyOf(choices);
        }
    }

    /**
     * One link.
     *
     * @param words   what is shown then
     * @param count   how many findings
     * @param address of the page then
     * @param state   {@code here} where it is chosen, else empty
     */
    public record Choice(String words, int count, String address, String state) {}

    /**
     * Findings that ask for the same.
     *
     * @param id      of its heading
     * @param look    end of its style
     * @param heading sign and word
     * @param count   how many there are
     * @param about   what it means to a planner; empty where that is plain
     * @param rows    findings that are told one by one
     * @param errands findings that wait for facts, by the way of getting these
     * @param waiting what waits for the rule book, worded; empty for nothing
     * @param limits  those findings
     * @param more    address where they are listed; empty where they are listed here
     */
    public record Group(
            String id,
            String look,
            String heading,
            int count,
            String about,
            List<Row> rows,
            List<Errand> errands,
            String waiting,
            List<Row> limits,
            String more) {
        public Group {
            rows = List.copyOf(rows);
            errands = List.copyOf(errands);
            limits = List.copyOf(limits);
        }
    }

    /**
     * One finding.
     *
     * @param figure value against limit, worded; empty where these are no numbers
     * @param kind   how binding it is and what it is about
     */
    public record Row(Note note, String figure, String kind) {}

    /**
     * One way of getting facts.
     *
     * @param heading what is to be done
     * @param answers how many findings wait for it, worded
     */
    public record Errand(String heading, String answers, List<Wanted> facts) {
        public Errand {
            facts = List.copyOf(facts);
        }
    }

    /**
     * A fact that is missing.
     *
     * @param words   what it is called and of which thing
     * @param address where it is written down
     * @param waiting how many findings wait for it, worded
     * @param rows    these findings
     */
    public record Wanted(String words, String address, String waiting, List<Row> rows) {
        public Wanted {
            rows = List.copyOf(rows);
        }
    }
}
