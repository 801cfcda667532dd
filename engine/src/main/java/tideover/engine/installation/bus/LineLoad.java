package tideover.engine.installation.bus;

import java.util.List;
import tideover.engine.site.BusPort;

/**
 * What hangs on a line, electrically.
 *
 * @param unitLoadRatio sum of unit loads
 * @param loadOhm       end resistors and unit loads in parallel; infinite where there are none [Ω]
 * @param idleV         voltage between the two lines while nobody talks; 0 where nothing holds them [V]
 */
public record LineLoad(double unitLoadRatio, double loadOhm, double idleV) {

    /** One unit load of TIA/EIA-485-A [Ω]. */
    private static final double UNIT_LOAD_OHM = 12_000;

    /** The load of some ports on one line; what they do not state counts as nothing. */
    static LineLoad of(List<BusPort> ports) {
        double unitLoads = 0;
        double siemens = 0;
        double biasSiemens = 0;
        double biasV = 0;
        for (BusPort port : ports) {
            if (port.unitLoadRatio() != null) unitLoads += port.unitLoadRatio();
            if (port.terminationOhm() != null) siemens += 1 / port.terminationOhm();
            if (port.biasOhm() != null && port.biasVoltageV() != null) {
                biasSiemens += 1 / port.biasOhm();
                biasV = Math.max(biasV, port.biasVoltageV());
            }
        }
        siemens += unitLoads / UNIT_LOAD_OHM;
        double loadOhm = siemens > 0 ? 1 / siemens : Double.POSITIVE_INFINITY;
        return new LineLoad(unitLoads, loadOhm, biasSiemens > 0 ? idleV(biasV, 1 / biasSiemens, loadOhm) : 0);
    }

    /**
     * Voltage of the idle line behind two equal resistors, one to the supply and one to the common: U·RL / (2R + RL).
     *
     * @param supplyV supply of the resistors [V]
     * @param biasOhm each of the two [Ω]
     * @param loadOhm what hangs between the lines [Ω]
     * @return [V]
     */
    public static double idleV(double supplyV, double biasOhm, double loadOhm) {
        return Double.isInfinite(loadOhm) ? supplyV : supplyV * loadOhm / (2 * biasOhm + loadOhm);
    }
}
