package tideover.engine.wiring.schedule;

import tideover.engine.installation.Installation;
import tideover.engine.installation.control.ControlNet;

/** All wiring lists of one site. */
public record Schedules(
        PowerSchedule power,
        ControlSchedule control,
        CuttingList cutting,
        LabelList labels,
        PartsList parts,
        AsBuilt built) {

    /**
     * Makes all of them.
     *
     * @param allowanceM what each piece of cable or wire is cut longer, both ends together [m]
     */
    public static Schedules of(Installation installation, ControlNet net, WiringTables tables, double allowanceM) {
        PowerSchedule power = PowerSchedule.of(installation, tables);
        ControlSchedule control = ControlSchedule.of(installation, net, tables);
        CuttingList cutting = CuttingList.of(power, control, allowanceM);
        return new Schedules(
                power,
                control,
                cutting,
                LabelList.of(installation, power, control),
                PartsList.of(installation, power, control, cutting),
                AsBuilt.of(installation.site()));
    }
}
