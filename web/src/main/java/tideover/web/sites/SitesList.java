package tideover.web.sites;

import java.util.List;
import tideover.web.page.Frame;

/**
 * The sites that are kept, the one changed last on top.
 *
 * @param query    what was searched for; empty for all
 * @param shelf    which are shown
 * @param rows     one for each site
 * @param counted  how many there are, worded
 * @param problems what is wrong with a file that was brought, one sentence each; none where none was
 */
public record SitesList(
        Frame frame, String query, Shelf shelf, List<Row> rows, String counted, List<FileProblem> problems) {
    public SitesList {
        rows = List.copyOf(rows);
        problems = List.copyOf(problems);
    }

    /** Which sites are shown. */
    public enum Shelf {
        IN_WORK,
        ARCHIVED
    }

    /**
     * One site.
     *
     * @param name     its designation
     * @param country  two letters; empty where nobody said
     * @param address  where the pages of the variant changed last begin
     * @param variants at least one
     */
    public record Row(String name, String country, String address, List<Entry> variants) {
        public Row {
            variants = List.copyOf(variants);
        }
    }

    /**
     * One variant of a site.
     *
     * @param address where its pages begin
     * @param name    of the variant
     * @param look    end of the style of its outcome
     * @param outcome sign and word
     * @param counts  what stands in the way, worded; empty where nothing does
     * @param changed when, worded
     */
    public record Entry(String address, String name, String look, String outcome, String counts, String changed) {}

    /**
     * What is wrong with a file.
     *
     * @param where    file, line and column, worded
     * @param sentence what is wrong and how to mend it
     * @param line     the line as it stands in the file; empty where it concerns none
     */
    public record FileProblem(String where, String sentence, String line) {}
}
