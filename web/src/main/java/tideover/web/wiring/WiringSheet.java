package tideover.web.wiring;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.papers.wiring.Listing;
import tideover.web.diagram.StateLink;
import tideover.web.jobs.JobView;
import tideover.web.page.Frame;

/**
 * One part of what is told of the wiring of a site.
 *
 * @param address  of the site
 * @param part     which, as addresses write it
 * @param parts    that may be shown instead
 * @param listings its tables
 * @param devices  whose cards may be shown alone; none but in the part about terminals
 * @param drawings sheets of the terminal drawing
 * @param allowance what each piece is cut longer, for the parts where that counts; else nothing
 * @param search   how far the search for mistakes is; nothing where none was started, or none is needed
 * @param need     whether this part needs that search
 */
public record WiringSheet(
        Frame frame,
        String address,
        String part,
        List<StateLink> parts,
        List<Listing> listings,
        List<StateLink> devices,
        List<Drawing> drawings,
        @Nullable Allowance allowance,
        @Nullable JobView search,
        Need need) {
    public WiringSheet {
        parts = List.copyOf(parts);
        listings = List.copyOf(listings);
        devices = List.copyOf(devices);
        drawings = List.copyOf(drawings);
    }

    /**
     * What each piece is cut longer.
     *
     * @param text    as it was typed, or the usual one
     * @param problem what is wrong with that; empty for nothing
     * @param query   behind the address of a table; empty for the usual one
     */
    public record Allowance(String text, String problem, String query) {}

    /** Whether a part is there at once. */
    public enum Need {
        NOTHING,
        SEARCH
    }

    /**
     * A sheet of the terminal drawing.
     *
     * @param file address of it as a file
     */
    public record Drawing(String title, String svg, String file) {}
}
