package tideover.engine.network.flow;

/** Finds the voltages at which every load draws what it draws at its voltage. */
final class FlowSolver {

    private static final double TOLERANCE_A = 1e-9;
    private static final int MOST_ITERATIONS = 300;

    private final FourWireNetwork network;
    private final Shape shape;
    private final LoadTable loads;
    private final double[] stampedR;
    private final double[] stampedX;
    private final double[] takenR;
    private final double[] takenX;
    private final double[] correctionR;
    private final double[] correctionX;
    private double residualA;
    private int worst;

    FlowSolver(FourWireNetwork network) {
        this.network = network;
        shape = network.shape;
        loads = network.loads;
        int count = loads.count();
        stampedR = new double[count];
        stampedX = new double[count];
        takenR = new double[count];
        takenX = new double[count];
        correctionR = new double[count];
        correctionX = new double[count];
    }

    FlowResult solve() {
        Factors factors = factors();
        int size = shape.baseRightR.length;
        double[] xR = new double[size];
        double[] xX = new double[size];
        double relaxation = 1;
        double before = Double.POSITIVE_INFINITY;
        for (int iteration = 1; iteration <= MOST_ITERATIONS; iteration++) {
            System.arraycopy(shape.baseRightR, 0, xR, 0, size);
            System.arraycopy(shape.baseRightX, 0, xX, 0, size);
            for (int i = 0; i < takenR.length; i++) inject(i, xR, xX);
            factors.solve(xR, xX);
            compare(xR, xX, relaxation);
            if (residualA <= TOLERANCE_A) return new Flow(network, iteration, residualA, xR, xX, takenR, takenX);
            if (!Double.isFinite(residualA)) return new NotConverged(iteration, Double.MAX_VALUE, worst);
            // Where the corrections overshoot, smaller steps arrive.
            if (residualA > before) relaxation = Math.max(0.1, relaxation * 0.7);
            before = residualA;
        }
        return new NotConverged(MOST_ITERATIONS, residualA, worst);
    }

    /** Loads enter the equations as the impedance they are at rated voltage; what feeds or leads only as current. */
    private Factors factors() {
        double[] diagonalR = shape.baseDiagonalR.clone();
        double[] diagonalX = shape.baseDiagonalX.clone();
        double[] offR = shape.baseOffR.clone();
        double[] offX = shape.baseOffX.clone();
        for (int i = 0; i < takenR.length; i++) {
            double square = loads.ratedVoltageV[i] * loads.ratedVoltageV[i];
            double yR = Math.max(0, loads.powerW[i]) / square;
            double yX = -Math.max(0, loads.reactiveVar[i]) / square;
            stampedR[i] = yR;
            stampedX[i] = yX;
            int u = shape.unknown[loads.from[i]];
            int v = shape.unknown[loads.to[i]];
            if (u == v) continue;
            if (u >= 0) {
                diagonalR[u] += yR;
                diagonalX[u] += yX;
            }
            if (v >= 0) {
                diagonalR[v] += yR;
                diagonalX[v] += yX;
            }
            if (shape.loadSlot[i] >= 0) {
                offR[shape.loadSlot[i]] -= yR;
                offX[shape.loadSlot[i]] -= yX;
            }
        }
        return new Factors(shape.elimination, diagonalR, diagonalX, offR, offX);
    }

    private void inject(int load, double[] xR, double[] xX) {
        int f = loads.from[load];
        int t = loads.to[load];
        int u = shape.unknown[f];
        int v = shape.unknown[t];
        // The stamped impedance also sees the fixed voltages between joined points.
        double eR = shape.joints.offsetR[f] - shape.joints.offsetR[t];
        double eX = shape.joints.offsetX[f] - shape.joints.offsetX[t];
        double iR = correctionR[load] + (u == v ? 0 : stampedR[load] * eR - stampedX[load] * eX);
        double iX = correctionX[load] + (u == v ? 0 : stampedR[load] * eX + stampedX[load] * eR);
        if (u == v) return;
        if (u >= 0) {
            xR[u] -= iR;
            xX[u] -= iX;
        }
        if (v >= 0) {
            xR[v] += iR;
            xX[v] += iX;
        }
    }

    /** What each load draws at the voltages found, beside what was taken; and the correction for the next round. */
    private void compare(double[] xR, double[] xX, double relaxation) {
        residualA = 0;
        worst = 0;
        double worstSquare = 0;
        for (int i = 0; i < takenR.length; i++) {
            int f = loads.from[i];
            int t = loads.to[i];
            int u = shape.unknown[f];
            int v = shape.unknown[t];
            double vR = shape.joints.offsetR[f] - shape.joints.offsetR[t];
            double vX = shape.joints.offsetX[f] - shape.joints.offsetX[t];
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
            double drawnR = yR * vR - yX * vX;
            double drawnX = yR * vX + yX * vR;
            double usedR = stampedR[i] * vR - stampedX[i] * vX + correctionR[i];
            double usedX = stampedR[i] * vX + stampedX[i] * vR + correctionX[i];
            double offR = drawnR - usedR;
            double offX = drawnX - usedX;
            double square = offR * offR + offX * offX;
            takenR[i] = drawnR;
            takenX[i] = drawnX;
            if (u == v) continue;
            // Written so that what is no number counts as worst.
            if (!(square <= worstSquare)) {
                worstSquare = square;
                worst = i;
            }
            correctionR[i] += relaxation * offR;
            correctionX[i] += relaxation * offX;
        }
        residualA = Math.sqrt(worstSquare);
    }
}
