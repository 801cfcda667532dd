package tideover.engine.network.flow;

import java.util.List;

/** Voltages and currents of a network during a fault. */
public final class FaultFlow {

    /** Far below any conductor, so that a fault at the terminals of an ideal source still has a current (own choice). */
    static final double BOLTED_OHM = 1e-9;

    private final FaultNetwork before;
    private final List<Short> shorts;
    private final Phasor[] shortA;
    private final double[] xR;
    private final double[] xX;
    private final BranchCurrents currents;
    private final double scale;

    /** @param commonOhm added between neighbouring connections that share a resistance [Ω] */
    FaultFlow(FaultNetwork before, List<Short> shorts, double commonOhm) {
        this.before = before;
        this.shorts = List.copyOf(shorts);
        scale = 1;
        int size = shorts.size();
        int unknowns = before.xR.length;
        double[][] halfR = new double[size][unknowns];
        double[][] halfX = new double[size][unknowns];
        Phasor[][] rows = new Phasor[size][size + 1];
        for (int i = 0; i < size; i++) {
            Short one = shorts.get(i);
            int from = before.network.shape.unknown[one.from()];
            int to = before.network.shape.unknown[one.to()];
            if (from >= 0) halfR[i][from] += 1;
            if (to >= 0) halfR[i][to] -= 1;
            before.factors.forward(halfR[i], halfX[i]);
            rows[i][size] = before.voltageV(one.from()).minus(before.voltageV(one.to()));
        }
        for (int i = 0; i < size; i++)
            for (int j = 0; j < size; j++) {
                Phasor ohm = before.factors.product(halfR[i], halfX[i], halfR[j], halfX[j]);
                rows[i][j] = ohm.plus(Phasor.of(i == j ? Math.max(shorts.get(i).faultOhm(), BOLTED_OHM) : commonOhm));
            }
        shortA = solve(rows);
        xR = new double[unknowns];
        xX = new double[unknowns];
        for (int i = 0; i < size; i++)
            for (int k = 0; k < unknowns; k++) {
                xR[k] -= shortA[i].real() * halfR[i][k] - shortA[i].imaginary() * halfX[i][k];
                xX[k] -= shortA[i].real() * halfX[i][k] + shortA[i].imaginary() * halfR[i][k];
            }
        before.factors.backward(xR, xX);
        for (int k = 0; k < unknowns; k++) {
            xR[k] += before.xR[k];
            xX[k] += before.xX[k];
        }
        double[] drawnR = new double[before.network.pointCount];
        double[] drawnX = new double[before.network.pointCount];
        for (int i = 0; i < size; i++) {
            drawnR[shorts.get(i).from()] += shortA[i].real();
            drawnX[shorts.get(i).from()] += shortA[i].imaginary();
            drawnR[shorts.get(i).to()] -= shortA[i].real();
            drawnX[shorts.get(i).to()] -= shortA[i].imaginary();
        }
        currents = new BranchCurrents(before.network, xR, xX, drawnR, drawnX);
    }

    private FaultFlow(FaultFlow other, double scale) {
        before = other.before;
        shorts = other.shorts;
        shortA = other.shortA;
        xR = other.xR;
        xX = other.xX;
        currents = other.currents;
        this.scale = scale;
    }

    /** Gauss with the largest pivot. */
    private static Phasor[] solve(Phasor[][] rows) {
        int size = rows.length;
        for (int k = 0; k < size; k++) {
            int pivot = k;
            for (int i = k + 1; i < size; i++) if (rows[i][k].magnitude() > rows[pivot][k].magnitude()) pivot = i;
            Phasor[] kept = rows[pivot];
            rows[pivot] = rows[k];
            rows[k] = kept;
            // Nothing but insulation lies in this loop, and its figures are used up: no current.
            if (rows[k][k].isZero()) continue;
            for (int i = 0; i < size; i++) {
                if (i == k) continue;
                Phasor factor = rows[i][k].over(rows[k][k]);
                for (int j = k; j <= size; j++) rows[i][j] = rows[i][j].minus(factor.times(rows[k][j]));
            }
        }
        Phasor[] solution = new Phasor[size];
        for (int k = 0; k < size; k++) solution[k] = rows[k][k].isZero() ? Phasor.ZERO : rows[k][size].over(rows[k][k]);
        return solution;
    }

    /**
     * The same fault with every e.m.f. lowered in proportion, as a source does that gives no more than so much.
     *
     * @param ratio what is left of the e.m.f., 0 to 1
     */
    public FaultFlow lowered(double ratio) {
        if (!(ratio >= 0 && ratio <= 1))
            throw new IllegalArgumentException("ratio %s is outside 0..1".formatted(ratio));
        return new FaultFlow(this, ratio * scale);
    }

    /** Voltage between the two points of a connection before the fault, r.m.s. [V]. */
    public double drivingVoltageV(int index) {
        Short one = shorts.get(index);
        return before.voltageV(one.from()).minus(before.voltageV(one.to())).magnitude() * scale;
    }

    /** Current through one of the connections of the fault, r.m.s. [A]. */
    public Phasor shortCurrentA(int index) {
        return shortA[index].times(scale);
    }

    /** Voltage of a point to remote earth, r.m.s. [V]. */
    public Phasor voltageV(int point) {
        return before.network.shape.voltageV(point, xR, xX).times(scale);
    }

    /** Current of a branch from its beginning to its end, r.m.s. [A]. */
    public Phasor currentA(int branch) {
        return currents.of(branch).times(scale);
    }
}
