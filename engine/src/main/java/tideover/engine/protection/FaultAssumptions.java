package tideover.engine.protection;

/**
 * What the rule book lays down for the calculation of faults.
 *
 * @param voltageFactorRatio        smallest voltage over nominal, the c_min
 * @param loopTemperatureDegC       conductor temperature of PVC cables at the end of a fault of the smallest current [°C]
 * @param safeVoltageV              voltage a source that has shut down may leave, line to earth [V]
 * @param measuredLoopRatio         share of U0/Ia a measured loop may reach; the only margin on a measured loop
 * @param largestVoltageFactorRatio largest voltage over nominal, the c_max
 * @param coldDegC                  conductor temperature for the largest current [°C]
 */
public record FaultAssumptions(
        double voltageFactorRatio,
        double loopTemperatureDegC,
        double safeVoltageV,
        double measuredLoopRatio,
        double largestVoltageFactorRatio,
        double coldDegC) {

    /** For books that do not cover short-circuits, whose checks are open then anyway (IEC 60909-0:2016, Table 1). */
    public static final double LARGEST_VOLTAGE_FACTOR_RATIO = 1.1;

    /** As above [°C] (IEC 60909-0:2016, 7.1.2). */
    public static final double COLD_DEG_C = 20;
}
