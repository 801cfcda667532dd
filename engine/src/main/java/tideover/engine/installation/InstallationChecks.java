package tideover.engine.installation;

import java.util.List;
import tideover.engine.rules.Check;

/** The checks that need no more than where things are connected. */
public final class InstallationChecks {

    private static final List<Check<Installation>> ALL = List.of(
            new SeparationCheck(),
            new NeutralSeparationCheck(),
            new PenCheck(),
            new LinkCountCheck(),
            new OwnElectrodeCheck(),
            new NetworkEarthCheck(),
            new NeutralSideCheck(),
            new NeutralContinuityCheck(),
            new SharedNeutralCheck(),
            new MeasuringNeutralCheck(),
            new MeasuringFuseCheck(),
            new MeasuringCoverageCheck(),
            new LockableIsolationCheck(),
            new ByPassCheck(),
            new InterlockCheck(),
            new NoticeCheck(),
            new FeedbackCheck(),
            new RestPositionCheck(),
            new SurgeCheck());

    private InstallationChecks() {}

    /** In the order in which they are best read. */
    public static List<Check<Installation>> all() {
        return ALL;
    }
}
