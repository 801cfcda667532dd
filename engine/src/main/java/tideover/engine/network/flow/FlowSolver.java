package tideover.engine.network.flow;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Finds the voltages at which every load draws what it draws at its voltage. */
final class FlowSolver {

    private static final double TOLERANCE_A = 1e-9;

    /** A feeding load above this share of its rated voltage has run away (own choice; inverters shut off far below). */
    private static final double MOST_FEEDING_RATIO = 2;

    private static final int QUICK_ITERATIONS = 30;
    private static final int MOST_ITERATIONS = 300;

    private final FourWireNetwork network;
    private final LoadTable loads;
    private final int count;
    private final double[] takenR;
    private final double[] takenX;
    private final double[] correction;
    private final double[] residual;
    private double residualA;
    private int worst;

    FlowSolver(FourWireNetwork network) {
        this.network = network;
        loads = network.loads;
        count = loads.count();
        takenR = new double[count];
        takenX = new double[count];
        // Real parts of all loads, then imaginary parts.
        correction = new double[2 * count];
        residual = new double[2 * count];
    }

    FlowResult solve() {
        int iterations = iterate(network.loaded, new Secant(2 * count), QUICK_ITERATIONS);
        if (residualA <= TOLERANCE_A && !ranAway()) return flow(network.loaded, iterations);
        // Near collapse only plain steps from the loads' own impedances arrive.
        Arrays.fill(correction, 0);
        LoadedFactors own = new LoadedFactors(network);
        iterations += iterate(own, null, MOST_ITERATIONS);
        if (residualA <= TOLERANCE_A) return flow(own, iterations);
        return new NotConverged(iterations, Double.isFinite(residualA) ? residualA : Double.MAX_VALUE, worst);
    }

    /** Whether what feeds stands at a voltage that no inverter would go along with: equations are solved there, no house. */
    private boolean ranAway() {
        for (int i = 0; i < count; i++) {
            double most = MOST_FEEDING_RATIO * loads.ratedVoltageV[i];
            double currentA = Math.hypot(takenR[i], takenX[i]);
            double powerVa = Math.hypot(loads.powerW[i], loads.reactiveVar[i]);
            if (loads.powerW[i] < 0 && currentA * most < powerVa) return true;
        }
        return false;
    }

    private Flow flow(LoadedFactors factors, int iterations) {
        int size = network.shape.baseRightR.length;
        double[] xR = new double[size];
        double[] xX = new double[size];
        factors.solve(correction, xR, xX);
        return new Flow(network, iterations, residualA, xR, xX, takenR, takenX);
    }

    /** @return rounds needed, or the most if they were too few */
    private int iterate(LoadedFactors factors, @Nullable Secant secant, int most) {
        double[] xR = new double[factors.partSize];
        double[] xX = new double[factors.partSize];
        double relaxation = 1;
        double before = Double.POSITIVE_INFINITY;
        for (int iteration = 1; iteration <= most; iteration++) {
            compare(factors, xR, xX);
            if (residualA <= TOLERANCE_A || !Double.isFinite(residualA)) return iteration;
            if (secant != null) {
                secant.improve(correction, residual);
            } else {
                // Where the corrections overshoot, smaller steps arrive.
                if (residualA > before) relaxation = Math.max(0.1, relaxation * 0.7);
                for (int i = 0; i < correction.length; i++) correction[i] += relaxation * residual[i];
            }
            before = residualA;
            correct(factors, xR, xX);
        }
        return most;
    }

    /** What the corrections change of the voltages. */
    private void correct(LoadedFactors factors, double[] xR, double[] xX) {
        Arrays.fill(xR, 0);
        Arrays.fill(xX, 0);
        for (int i = 0; i < count; i++) {
            int u = factors.from[i];
            int v = factors.to[i];
            if (u >= 0) {
                xR[u] -= correction[i];
                xX[u] -= correction[count + i];
            }
            if (v >= 0) {
                xR[v] += correction[i];
                xX[v] += correction[count + i];
            }
        }
        factors.part.solve(xR, xX);
    }

    /** What each load draws at the voltages found, beside what was taken. */
    private void compare(LoadedFactors factors, double[] xR, double[] xX) {
        worst = 0;
        double worstSquare = 0;
        for (int i = 0; i < count; i++) {
            int u = factors.from[i];
            int v = factors.to[i];
            double vR = factors.restR[i];
            double vX = factors.restX[i];
            if (u >= 0) {
                vR += xR[u];
                vX += xX[u];
            }
            if (v >= 0) {
                vR -= xR[v];
                vX -= xX[v];
            }
            double factor = loads.factor(i, vR * vR + vX * vX);
            double yR = loads.powerW[i] * factor;
            double yX = -loads.reactiveVar[i] * factor;
            takenR[i] = yR * vR - yX * vX;
            takenX[i] = yR * vX + yX * vR;
            // Between points that are one nothing reacts: the load takes what it takes.
            if (u == v) continue;
            double offR = takenR[i] - (factors.stampedR[i] * vR - factors.stampedX[i] * vX + correction[i]);
            double offX = takenX[i] - (factors.stampedR[i] * vX + factors.stampedX[i] * vR + correction[count + i]);
            residual[i] = offR;
            residual[count + i] = offX;
            double square = offR * offR + offX * offX;
            // Written so that what is no number counts as worst.
            if (!(square <= worstSquare)) {
                worstSquare = square;
                worst = i;
            }
        }
        residualA = Math.sqrt(worstSquare);
    }
}
