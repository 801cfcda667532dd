package tideover.web.limits;

import java.util.List;
import tideover.web.page.Frame;

/**
 * The rule book of a site.
 *
 * @param address of the site
 * @param book    which it is, and the books it lies over
 * @param counts  how many limits there are and how far they were compared
 * @param topics  all there are, those without limits too
 */
public record LimitsSheet(Frame frame, String address, String book, String counts, List<Part> topics) {
    public LimitsSheet {
        topics = List.copyOf(topics);
    }

    /**
     * One topic.
     *
     * @param id       its word
     * @param heading  its name
     * @param stance   how the book stands to it
     * @param findings address of the findings about it
     * @param limits   in the order of their ids; none where the book has none
     */
    public record Part(String id, String heading, String stance, String findings, List<Row> limits) {
        public Part {
            limits = List.copyOf(limits);
        }
    }

    /**
     * One limit.
     *
     * @param id           as rule books write it
     * @param value        with its unit, or the choice
     * @param force        how binding it is
     * @param document     where it stands
     * @param clause       where in that; empty where there is none
     * @param verification how far it was compared
     * @param book         that it was taken from
     * @param note         remark for the reader; empty for none
     */
    public record Row(
            String id,
            String value,
            String force,
            String document,
            String clause,
            String verification,
            String book,
            String note) {}
}
