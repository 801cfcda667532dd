package tideover.engine.wiring.schedule;

import tideover.engine.installation.Installation;
import tideover.engine.site.Conductor;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;

/** Short names of things and the maker's names of their power terminals, as schedules, labels and drawings bear them. */
public final class TerminalNames {

    private final Installation installation;
    private final Tags tags;

    public TerminalNames(Installation installation) {
        this.installation = installation;
        this.tags = new Tags(installation);
    }

    /** Short name of a thing, such as {@code QA1}. */
    public String tag(ThingId thing) {
        return tags.of(thing);
    }

    /** Name of a power terminal, such as {@code 2T1}; that of the conductor where the maker's is not stated. */
    public String terminal(ThingId thing, Terminals side, Conductor conductor) {
        // Made anew, because it hands out the first of two neutral terminals once only.
        return new PowerNames(installation, tags)
                .end(new Nodes.Place(thing, side, conductor))
                .terminal();
    }
}
