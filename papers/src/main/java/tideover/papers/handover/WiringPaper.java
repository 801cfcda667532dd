package tideover.papers.handover;

import java.util.List;
import tideover.engine.site.ThingId;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.wiring.Listing;

/** Wiring lists as a paper of their own, for whoever wires. */
public final class WiringPaper {

    /** What runs along its pages. */
    record Running(String site, String title, String revision, String date) {}

    private final Wording wording;
    private final Stamp stamp;
    private final List<Listing> listings;

    /** @param wording knows the names of the site */
    public WiringPaper(List<Listing> listings, Wording wording, Stamp stamp) {
        this.listings = List.copyOf(listings);
        this.wording = wording;
        this.stamp = stamp;
    }

    /** The paper as PDF; the same lists and stamp give the same bytes. */
    public byte[] pdf() {
        String site = wording.capitalised(wording.name(ThingId.PLACE));
        Running running = new Running(
                site,
                wording.text("wiring.title"),
                stamp.revision().shortened(),
                stamp.date().toString());
        String title = wording.text("wiring.of", site);
        String body = Template.in("running.xhtml").fill(running, wording) + WiringPages.body(listings, wording);
        return new Press(wording.locale(), title, stamp)
                .print(body, List.of(new Press.Bookmark(title, "wiring")), pdf -> {});
    }
}
