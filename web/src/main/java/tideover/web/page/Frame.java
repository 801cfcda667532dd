package tideover.web.page;

import org.jspecify.annotations.Nullable;
import tideover.papers.Wording;

/**
 * What stands around every page.
 *
 * @param title     of the window
 * @param words     wording in the reader's language
 * @param formToken what every form sends along, so that no other site can send it
 * @param site      the site it belongs to, if any
 */
public record Frame(
        String title,
        Wording words,
        String formToken,
        @Nullable SiteHead site) {}
