package tideover.engine.protection;

/**
 * What the rule book lays down for the calculation of fault loops.
 *
 * @param voltageFactorRatio smallest voltage over nominal, the c_min
 * @param loopTemperatureDegC conductor temperature of PVC cables [°C]
 * @param safeVoltageV      voltage a source that has shut down may leave, line to earth [V]
 * @param measuredLoopRatio  share of U0/Ia a measured loop may reach; the only margin on a measured loop
 */
public record FaultAssumptions(
        double voltageFactorRatio, double loopTemperatureDegC, double safeVoltageV, double measuredLoopRatio) {}
