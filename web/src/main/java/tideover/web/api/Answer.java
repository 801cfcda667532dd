package tideover.web.api;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.store.customer.CustomerFacts;

/** What programs are told, as JSON. Names are those of site files and findings; fields are only ever added. */
final class Answer {
    private Answer() {}

    /** The sites that match. */
    record Sites(List<Site> sites) {}

    /**
     * A site as it stands in a list.
     *
     * @param archived when it was put away; nothing while it is worked on
     */
    record Site(String site, String created, @Nullable String archived, List<Variant> variants) {}

    /**
     * A variant as it stands in a list.
     *
     * @param variant  its lasting name, which stands in addresses
     * @param revision number of its newest revision
     */
    record Variant(
            String variant,
            String site,
            String name,
            long revision,
            String designation,
            String country,
            String changed) {}

    /** A variant at its newest revision, judged. */
    record Head(Variant variant, Revision revision, Findings findings) {}

    /**
     * One revision.
     *
     * @param contentOf number of the revision whose content it repeats; nothing where it is its own
     */
    record Revision(
            long revision,
            String digest,
            String kind,
            @Nullable Long contentOf,
            String who,
            String when,
            String note,
            List<Edit> edits) {}

    /** The revisions of a variant, the oldest first. */
    record Revisions(List<Revision> revisions) {}

    /** One change of one fact. */
    record Edit(
            String path, @Nullable String before, @Nullable String after) {}

    /** What is different. */
    record Difference(List<Edit> edits) {}

    /**
     * How a site is judged, in short.
     *
     * @param verdict  the worst outcome that binds
     * @param sentence the same in words
     * @param counts   findings of each outcome that is there
     * @param pending  whether slow findings are still to come
     */
    record Findings(String verdict, String sentence, Map<String, Integer> counts, boolean pending) {}

    /** What came of a change: the newest revision, whether it was made by it or was there already. */
    record Changed(boolean saved, Revision revision, Findings findings) {}

    /** Facts at one revision. */
    record Facts(long revision, List<Fact> facts) {}

    /** One fact; nothing where nobody stated it. */
    record Fact(String path, @Nullable String value) {}

    /** Why something was not done: all of it. */
    record Refused(List<Problem> problems) {}

    /**
     * One thing in the way.
     *
     * @param file   of a file that was sent; empty where there is none
     * @param line   from 1; 0 where it concerns no line
     * @param column from 1; 0 where it concerns no line
     * @param path   of the fact; empty where it concerns none
     */
    record Problem(String sentence, String file, int line, int column, String path) {
        static Problem of(String sentence) {
            return new Problem(sentence, "", 0, 0, "");
        }
    }

    /**
     * Somebody else changed the same meanwhile; nothing was saved.
     *
     * @param problems  that in words
     * @param revision  the newest there is
     * @param conflicts facts that both wanted to change
     * @param since     revisions that changed them, the oldest first
     */
    record Conflicting(List<Problem> problems, Revision revision, List<Conflict> conflicts, List<Revision> since) {}

    /**
     * One fact that two wanted to change.
     *
     * @param before what the program thought stood there
     * @param after  what it wanted
     * @param now    what stands there
     */
    record Conflict(
            String path,
            @Nullable String before,
            @Nullable String after,
            @Nullable String now) {}

    /** The photos and documents of a site, the oldest first. */
    record Attachments(List<Attachment> attachments) {}

    /** A photo or document; the place is a thing, a fact, or empty for the site as a whole. */
    record Attachment(
            String attachment,
            String site,
            String place,
            String fileName,
            String mediaType,
            String digest,
            long sizeBytes,
            boolean personal,
            String who,
            String added,
            String note) {}

    /** The customers that match. */
    record Customers(List<Customer> customers) {}

    /** A customer as it stands in a list. */
    record Customer(String customer, String name, String town) {}

    /**
     * All that is known of a customer.
     *
     * @param forgotten when everything was erased; nothing while it was not
     * @param sites     the sites that are the customer's
     */
    record KnownCustomer(String customer, @Nullable String forgotten, CustomerFacts facts, List<String> sites) {}
}
