package tideover.engine.wiring.model;

import java.util.EnumMap;
import java.util.Map;
import tideover.engine.wiring.model.Machine.Until;

/**
 * How long the changeover from the grid to the island takes in the healthy house, by the settings of its inverter and the
 * moving times of its devices.
 *
 * @param noticingTimeS   until the inverter has noticed the loss and opened its own relays [s]
 * @param separatingTimeS from there until it is told that the islanding switch is open [s]
 * @param earthingTimeS   from there until it is told that the neutral is earthed [s]
 * @param formingTimeS    from there until its voltage stands [s]
 * @param sumTimeS        all of it, without voltage in the house; infinite where it does not come to an island [s]
 */
public record Changeover(
        double noticingTimeS, double separatingTimeS, double earthingTimeS, double formingTimeS, double sumTimeS) {

    /** The loss of the grid's lines, everything in service before. */
    public static Changeover of(HouseModel model) {
        Machine machine = model.machine(Defect.NONE);
        machine.run(Surroundings.IN_SERVICE, Until.AT_REST);
        Map<Phase, Double> times = new EnumMap<>(Phase.class);
        machine.run(Surroundings.IN_SERVICE.withoutGrid(), Until.AT_REST, (at, seconds) -> {
            if (Double.isFinite(seconds)) times.merge(at.phase(), seconds, Double::sum);
        });
        double noticingS = times.getOrDefault(Phase.LOSING, 0.0);
        double separatingS = times.getOrDefault(Phase.SEPARATING, 0.0);
        double earthingS = times.getOrDefault(Phase.EARTHING, 0.0);
        double formingS = times.getOrDefault(Phase.STARTING, 0.0);
        double sumS = noticingS + separatingS + earthingS + formingS;
        boolean isIsland = machine.phase().isForming() && !machine.isUnsettled();
        return new Changeover(noticingS, separatingS, earthingS, formingS, isIsland ? sumS : Double.POSITIVE_INFINITY);
    }
}
