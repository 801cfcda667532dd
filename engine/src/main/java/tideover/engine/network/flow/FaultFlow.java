package tideover.engine.network.flow;

import java.util.List;

/** Voltages and currents of a network during a fault. */
public final class FaultFlow {

    /** Far below any conductor, so that a fault at the terminals of an ideal source still has a current (own choice). */
    private static final double BOLTED_OHM = 1e-9;

    private final FaultNetwork before;
    private final List<Short> shorts;
    private final Phasor[] shortA;
    private final double scale;

    FaultFlow(FaultNetwork before, List<Short> shorts) {
        this.before = before;
        this.shorts = List.copyOf(shorts);
        scale = 1;
        int size = shorts.size();
        Phasor[][] rows = new Phasor[size][size + 1];
        for (int i = 0; i < size; i++) {
            Short one = shorts.get(i);
            for (int j = 0; j < size; j++) {
                Short two = shorts.get(j);
                Phasor ohm = before.transferOhm(one.from(), two.from())
                        .minus(before.transferOhm(one.from(), two.to()))
                        .minus(before.transferOhm(one.to(), two.from()))
                        .plus(before.transferOhm(one.to(), two.to()));
                rows[i][j] = i == j ? ohm.plus(Phasor.of(Math.max(one.faultOhm(), BOLTED_OHM))) : ohm;
            }
            rows[i][size] = before.voltageV(one.from()).minus(before.voltageV(one.to()));
        }
        shortA = solve(rows);
    }

    private FaultFlow(FaultFlow other, double scale) {
        before = other.before;
        shorts = other.shorts;
        shortA = other.shortA;
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
            for (int i = 0; i < size; i++) {
                if (i == k) continue;
                Phasor factor = rows[i][k].over(rows[k][k]);
                for (int j = k; j <= size; j++) rows[i][j] = rows[i][j].minus(factor.times(rows[k][j]));
            }
        }
        Phasor[] solution = new Phasor[size];
        for (int k = 0; k < size; k++) solution[k] = rows[k][size].over(rows[k][k]);
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
        Phasor left = before.voltageV(point);
        for (int i = 0; i < shortA.length; i++) {
            Phasor ohm = before.transferOhm(point, shorts.get(i).from())
                    .minus(before.transferOhm(point, shorts.get(i).to()));
            left = left.minus(ohm.times(shortA[i]));
        }
        return left.times(scale);
    }

    /** Current of a branch from its beginning to its end, r.m.s. [A]. */
    public Phasor currentA(int branch) {
        double r = before.sources.currents.real(branch);
        double x = before.sources.currents.imaginary(branch);
        for (int i = 0; i < shortA.length; i++) {
            BranchCurrents there = before.response(shorts.get(i).from()).currents;
            BranchCurrents back = before.response(shorts.get(i).to()).currents;
            double pR = there.real(branch) - back.real(branch);
            double pX = there.imaginary(branch) - back.imaginary(branch);
            r += pR * shortA[i].real() - pX * shortA[i].imaginary();
            x += pR * shortA[i].imaginary() + pX * shortA[i].real();
        }
        return new Phasor(r * scale, x * scale);
    }
}
