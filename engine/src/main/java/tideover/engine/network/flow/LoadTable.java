package tideover.engine.network.flow;

import java.util.List;

/** All loads of a network as columns, which the solver runs over many times. */
final class LoadTable {

    final int[] from;
    final int[] to;
    final double[] powerW;
    final double[] reactiveVar;
    final double[] ratedVoltageV;
    final double[] powerRatio;
    final double[] currentRatio;
    final double[] impedanceRatio;

    LoadTable(List<PowerLoad> loads) {
        int count = loads.size();
        from = new int[count];
        to = new int[count];
        powerW = new double[count];
        reactiveVar = new double[count];
        ratedVoltageV = new double[count];
        powerRatio = new double[count];
        currentRatio = new double[count];
        impedanceRatio = new double[count];
        for (int i = 0; i < count; i++) {
            PowerLoad load = loads.get(i);
            from[i] = load.from();
            to[i] = load.to();
            powerW[i] = load.powerW();
            reactiveVar[i] = load.reactiveVar();
            ratedVoltageV[i] = load.ratedVoltageV();
            powerRatio[i] = load.powerRatio();
            currentRatio[i] = load.currentRatio();
            impedanceRatio[i] = load.impedanceRatio();
        }
    }

    private LoadTable(LoadTable other, double[] powerW, double[] reactiveVar) {
        from = other.from;
        to = other.to;
        this.powerW = powerW;
        this.reactiveVar = reactiveVar;
        ratedVoltageV = other.ratedVoltageV;
        powerRatio = other.powerRatio;
        currentRatio = other.currentRatio;
        impedanceRatio = other.impedanceRatio;
    }

    int count() {
        return from.length;
    }

    PowerLoad load(int load) {
        return new PowerLoad(
                from[load],
                to[load],
                powerW[load],
                reactiveVar[load],
                ratedVoltageV[load],
                powerRatio[load],
                currentRatio[load],
                impedanceRatio[load]);
    }

    LoadTable withPowers(double[] changedW, double[] changedVar) {
        if (changedW.length != count() || changedVar.length != count())
            throw new IllegalArgumentException(
                    "%d and %d powers for %d loads".formatted(changedW.length, changedVar.length, count()));
        return new LoadTable(this, changedW.clone(), changedVar.clone());
    }

    /**
     * What a load takes at a voltage, as admittance: the real part over the imaginary one follow from the powers, so only
     * their common factor is returned [1/V²].
     */
    double factor(int load, double squareV2) {
        double rated = ratedVoltageV[load];
        if (impedanceRatio[load] == 1) return 1 / (rated * rated);
        double low = PowerLoad.LOW_VOLTAGE_RATIO * rated;
        if (powerRatio[load] == 1) return 1 / Math.max(squareV2, low * low);
        double ratio = Math.sqrt(squareV2) / rated;
        double at = Math.max(ratio, PowerLoad.LOW_VOLTAGE_RATIO);
        return (powerRatio[load] + at * (currentRatio[load] + at * impedanceRatio[load])) / (at * at * rated * rated);
    }
}
