package tideover.engine.network.flow;

/**
 * A load between two points. Its power at a voltage U is its rated power times
 * (powerRatio + currentRatio · U/U_n + impedanceRatio · (U/U_n)²). Below 0.7 U_n it goes on as the impedance it is there:
 * no real load draws ever more from a vanishing voltage.
 *
 * @param powerW         active power at the rated voltage [W]; negative feeds
 * @param reactiveVar    reactive power at the rated voltage [var]; positive lags
 * @param ratedVoltageV  between the two points, r.m.s. [V], above 0
 * @param powerRatio     share drawn as constant power
 * @param currentRatio   share drawn as constant current
 * @param impedanceRatio share drawn as constant impedance; the three add up to 1
 */
public record PowerLoad(
        int from,
        int to,
        double powerW,
        double reactiveVar,
        double ratedVoltageV,
        double powerRatio,
        double currentRatio,
        double impedanceRatio) {

    /** Share of the rated voltage below which any load is an impedance (own choice; motors and rectifiers stall there). */
    public static final double LOW_VOLTAGE_RATIO = 0.7;

    public PowerLoad {
        if (!Double.isFinite(powerW) || !Double.isFinite(reactiveVar))
            throw new IllegalArgumentException("powerW %s, reactiveVar %s".formatted(powerW, reactiveVar));
        if (!(ratedVoltageV > 0)) throw new IllegalArgumentException("ratedVoltageV %s".formatted(ratedVoltageV));
        if (!(Math.abs(powerRatio + currentRatio + impedanceRatio - 1) < 1e-9))
            throw new IllegalArgumentException(
                    "shares %s, %s and %s do not add up to 1".formatted(powerRatio, currentRatio, impedanceRatio));
    }

    /** A load that draws the same power whatever the voltage. */
    public static PowerLoad constantPower(int from, int to, double powerW, double reactiveVar, double ratedVoltageV) {
        return new PowerLoad(from, to, powerW, reactiveVar, ratedVoltageV, 1, 0, 0);
    }

    /** A load that is an impedance, such as a heater. */
    public static PowerLoad impedance(int from, int to, double powerW, double reactiveVar, double ratedVoltageV) {
        return new PowerLoad(from, to, powerW, reactiveVar, ratedVoltageV, 0, 0, 1);
    }
}
