package tideover.web.page;

import java.util.Locale;

/** The stops of the job, in the order of work. */
public enum Stop {
    SURVEY,
    CIRCUITS,
    FINDINGS,
    DIAGRAM,
    NETWORK,
    WIRING,
    HANDOVER;

    /** Last part of its address. */
    public String path() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it is called, in the bundle. */
    public String key() {
        return "stop." + path();
    }
}
