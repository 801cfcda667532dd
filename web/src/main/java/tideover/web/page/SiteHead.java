package tideover.web.page;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The head of a site's pages.
 *
 * @param address  of the site, such as {@code /sites/3f…}
 * @param name     its designation
 * @param variant  which of its variants; empty where there is one only
 * @param revision number of the revision shown
 * @param changed  when that was written, worded
 * @param here     the stop shown; nothing on a page that is none
 * @param open     what is open at each stop, worded; no entry where nothing is
 */
public record SiteHead(
        String address,
        String name,
        String variant,
        long revision,
        String changed,
        @Nullable Stop here,
        Map<Stop, String> open) {
    public SiteHead {
        open = Map.copyOf(open);
    }
}
