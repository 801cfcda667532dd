package tideover.papers.wiring;

import java.util.List;
import tideover.engine.assessment.FindingChange;
import tideover.engine.installation.Installation;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.wiring.schedule.Schedules;
import tideover.engine.wiring.schedule.WiringTables;
import tideover.papers.Wording;

/**
 * All there is to tell of the wiring of a site.
 *
 * @param model   the wiring model, worked out as far as a part asks it
 * @param wording knows the names of the site
 * @param changes findings that came out otherwise because something was built otherwise than planned
 */
public record WiringData(
        Installation installation,
        ControlNet net,
        WiringTables tables,
        Schedules schedules,
        List<FindingChange> changes,
        WiringModel model,
        Wording wording) {
    public WiringData {
        changes = List.copyOf(changes);
    }

    /**
     * The wiring of a site.
     *
     * @param allowanceM what each piece of cable or wire is cut longer, both ends together [m]
     */
    public static WiringData of(
            Installation installation,
            WiringTables tables,
            List<FindingChange> changes,
            Wording wording,
            double allowanceM) {
        ControlNet net = ControlNet.of(installation);
        Wording named = wording.with(installation);
        return new WiringData(
                installation,
                net,
                tables,
                Schedules.of(installation, net, tables, allowanceM),
                changes,
                new WiringModel(installation, named),
                named);
    }
}
