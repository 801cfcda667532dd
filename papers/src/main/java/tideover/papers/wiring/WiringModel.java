package tideover.papers.wiring;

import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.wiring.diagnosis.Dictionary;
import tideover.engine.wiring.mistake.Coverage;
import tideover.engine.wiring.mistake.Mistakes;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.procedure.Procedure;
import tideover.engine.wiring.procedure.Run;
import tideover.papers.Wording;

/** The wiring model of a house with what is worked out on it, each when it is first asked for. For one thread. */
public final class WiringModel {

    private final Installation installation;
    private final Wording wording;
    private @Nullable HouseModel model;
    private @Nullable Run run;
    private @Nullable Coverage coverage;
    private @Nullable Dictionary dictionary;

    /** @param wording knows the names of the site */
    public WiringModel(Installation installation, Wording wording) {
        this.installation = installation;
        this.wording = wording;
    }

    /** The house ready to be run. */
    public HouseModel house() {
        HouseModel made = model;
        if (made == null) model = made = HouseModel.of(installation);
        return made;
    }

    /** The steps, run on the healthy house. */
    public Run run() {
        Run made = run;
        if (made == null) run = made = Run.of(Procedure.of(house()));
        return made;
    }

    /** Which step reveals which mistake. */
    public Coverage coverage() {
        return coverage(Coverage.Progress.NOT_TOLD);
    }

    /** The same; whoever waits for it is told how far it is, unless it is there already. */
    public Coverage coverage(Coverage.Progress progress) {
        Coverage made = coverage;
        if (made == null) coverage = made = Coverage.of(run(), Mistakes.of(house()), progress);
        return made;
    }

    /** What every reading shows with every mistake. */
    public Dictionary dictionary() {
        Dictionary made = dictionary;
        if (made == null) dictionary = made = Dictionary.of(run(), Mistakes.of(house()));
        return made;
    }

    /** Its words. */
    public WiringWording words() {
        return new WiringWording(house(), wording);
    }
}
