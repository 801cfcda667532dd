package tideover.engine.network.house;

import tideover.engine.site.Supply;

/**
 * The grid as a source at the connection point: a voltage behind an impedance. Impedances are taken as resistances, so
 * that they add to those of the house in full, which is the safe side for drop and for the smallest fault current.
 *
 * @param voltageV   line to neutral, r.m.s. [V]
 * @param lineOhm    of each line up to the connection point [Ω]
 * @param neutralOhm of the neutral or PEN up to there [Ω]
 */
public record GridSource(double voltageV, double lineOhm, double neutralOhm) {

    /** Reference impedance of a public network, line and neutral, absolute values [Ω] (IEC 60725:2012, clause 4, from memory). */
    private static final double REFERENCE_LINE_OHM = Math.hypot(0.24, 0.15);

    private static final double REFERENCE_NEUTRAL_OHM = Math.hypot(0.16, 0.10);

    public GridSource {
        if (!(voltageV > 0) || !(lineOhm >= 0) || !(neutralOhm >= 0))
            throw new IllegalArgumentException("%s V behind %s and %s ohm".formatted(voltageV, lineOhm, neutralOhm));
    }

    /** The grid as it normally is: nominal voltage, measured loop or the reference impedance. */
    public static GridSource usual(Supply supply, double nominalVoltageV) {
        Double loopOhm = supply.loopImpedanceOhm();
        if (loopOhm == null) return new GridSource(nominalVoltageV, REFERENCE_LINE_OHM, REFERENCE_NEUTRAL_OHM);
        return behindLoop(supply, nominalVoltageV, loopOhm);
    }

    /**
     * A voltage behind a loop that is divided between line and neutral as the prospective current says, else as the
     * reference impedance is.
     *
     * @param voltageV line to neutral, r.m.s. [V]; for the smallest fault current the lowest
     * @param loopOhm  line to neutral or PEN, as measured or assumed [Ω]
     */
    public static GridSource behindLoop(Supply supply, double voltageV, double loopOhm) {
        double share = REFERENCE_LINE_OHM / (REFERENCE_LINE_OHM + REFERENCE_NEUTRAL_OHM);
        Double prospectiveA = supply.prospectiveCurrentA();
        double lineOhm = prospectiveA == null ? share * loopOhm : Math.min(loopOhm, voltageV / prospectiveA);
        return new GridSource(voltageV, lineOhm, loopOhm - lineOhm);
    }

    /**
     * The grid at its strongest, for largest fault currents: the prospective current flows between any two conductors of
     * which one is a line.
     */
    public static GridSource strongest(double voltageV, double prospectiveA) {
        return new GridSource(voltageV, voltageV / prospectiveA, 0);
    }
}
