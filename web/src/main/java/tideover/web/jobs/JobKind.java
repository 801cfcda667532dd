package tideover.web.jobs;

import java.util.Locale;

/** Kinds of long work; one of each is done at a time. */
public enum JobKind {
    /** The papers of a site. */
    PAPERS("/handover"),
    /** Every wiring mistake that could be made, tried out. */
    MISTAKES("/wiring?part=coverage");

    private final String page;

    JobKind(String page) {
        this.page = page;
    }

    /** Behind the address of a site: the page on which it is shown. */
    String page() {
        return page;
    }

    /** As it is written in addresses and keys. */
    String path() {
        return name().toLowerCase(Locale.ROOT);
    }
}
