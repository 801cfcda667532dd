package tideover.engine.network;

/**
 * Ampacity of a conductor as it is laid, with the factors that led to it, so that the calculation can be shown.
 *
 * @param tabulated        ampacity at the table's own conditions
 * @param temperatureRatio factor for the temperature of air or soil
 * @param groupingRatio    factor for circuits that warm each other
 */
public record InstalledAmpacity(Ampacity tabulated, double temperatureRatio, double groupingRatio) {

    /** The I_z of IEC 60364-4-43, r.m.s. [A]. */
    public double currentA() {
        return tabulated.currentA() * temperatureRatio * groupingRatio;
    }
}
