package tideover.reference.network;

import java.util.Arrays;
import java.util.List;
import org.ejml.data.Complex_F64;
import org.ejml.data.ZMatrixRMaj;
import org.ejml.dense.row.factory.LinearSolverFactory_ZDRM;
import org.ejml.interfaces.linsol.LinearSolverDense;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.PowerLoad;
import tideover.engine.network.flow.Short;
import tideover.reference.network.NetworkCase.Wires;

/**
 * The whole network as one dense system of complex equations, solved by a library: unknown are the voltage of every point
 * and the current of every branch and short; a row for each point (what flows to it flows away) and for each current (Ohm's
 * law). Nothing is eliminated, joined or corrected as ours does it; a load is the admittance it is at the last voltage.
 */
final class WholeSolve {

    private static final int MOST_ROUNDS = 500;

    private final NetworkCase one;
    private final int points;
    private final int branches;
    private final List<Short> shorts;
    private final Phasor[] admittanceS;
    private final ZMatrixRMaj solution;

    private WholeSolve(NetworkCase one) {
        this.one = one;
        points = one.network().pointCount();
        branches = one.network().branchCount();
        shorts = List.copyOf(one.shorts().values());
        admittanceS = new Phasor[one.loads().size()];
        solution = new ZMatrixRMaj(points + branches + shorts.size(), 1);
    }

    /** @throws AssertionError if the loads do not come to rest */
    static WholeSolve of(NetworkCase one) {
        WholeSolve whole = new WholeSolve(one);
        whole.solve();
        return whole;
    }

    private void solve() {
        // Every load begins as what it is at rated voltage.
        for (int i = 0; i < admittanceS.length; i++)
            admittanceS[i] = admittanceS(one.loads().get(i), one.loads().get(i).ratedVoltageV());
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] before = solution.data.clone();
            system();
            double largest = 0;
            for (int i = 0; i < before.length; i++) largest = Math.max(largest, Math.abs(before[i] - solution.data[i]));
            if (largest < 1e-10) return;
            for (int i = 0; i < admittanceS.length; i++) {
                PowerLoad load = one.loads().get(i);
                admittanceS[i] = admittanceS(
                        load, voltageV(load.from()).minus(voltageV(load.to())).magnitude());
            }
        }
        throw new AssertionError(one + ": the whole system does not come to rest");
    }

    private static Phasor admittanceS(PowerLoad load, double voltageV) {
        double ratio = Math.max(voltageV / load.ratedVoltageV(), 0.7);
        double factor = load.powerRatio() / (ratio * ratio) + load.currentRatio() / ratio + load.impedanceRatio();
        double square = load.ratedVoltageV() * load.ratedVoltageV();
        return new Phasor(load.powerW() * factor / square, -load.reactiveVar() * factor / square);
    }

    private void system() {
        int size = solution.numRows;
        ZMatrixRMaj matrix = new ZMatrixRMaj(size, size);
        ZMatrixRMaj right = new ZMatrixRMaj(size, 1);
        for (int i = 0; i < admittanceS.length; i++) {
            PowerLoad load = one.loads().get(i);
            add(matrix, load.from(), load.from(), admittanceS[i]);
            add(matrix, load.to(), load.to(), admittanceS[i]);
            add(matrix, load.from(), load.to(), admittanceS[i].times(-1));
            add(matrix, load.to(), load.from(), admittanceS[i].times(-1));
        }
        for (Wires wires : one.wires()) {
            for (int i = 0; i < wires.branches().size(); i++) {
                int branch = wires.branches().get(i);
                join(matrix, one.network().from(branch), one.network().to(branch), points + branch);
                for (int j = 0; j < wires.branches().size(); j++)
                    add(
                            matrix,
                            points + branch,
                            points + wires.branches().get(j),
                            wires.ohm().get(i).get(j).times(-1));
                right.set(
                        points + branch, 0, -wires.emfV().real(), -wires.emfV().imaginary());
            }
        }
        for (int i = 0; i < shorts.size(); i++) {
            int row = points + branches + i;
            join(matrix, shorts.get(i).from(), shorts.get(i).to(), row);
            add(matrix, row, row, Phasor.of(-shorts.get(i).faultOhm()));
        }
        // Remote earth is 0 V; what flows to it follows from the other points.
        Arrays.fill(matrix.data, 0, 2 * size, 0);
        matrix.set(0, 0, 1, 0);
        LinearSolverDense<ZMatrixRMaj> solver = LinearSolverFactory_ZDRM.lu(size);
        if (!solver.setA(matrix)) throw new AssertionError(one + " is singular");
        solver.solve(right, solution);
    }

    /** A current from one point to another, and the voltage between them in its own row. */
    private static void join(ZMatrixRMaj matrix, int from, int to, int current) {
        add(matrix, from, current, Phasor.of(1));
        add(matrix, to, current, Phasor.of(-1));
        add(matrix, current, from, Phasor.of(1));
        add(matrix, current, to, Phasor.of(-1));
    }

    private static void add(ZMatrixRMaj matrix, int row, int column, Phasor value) {
        Complex_F64 there = new Complex_F64();
        matrix.get(row, column, there);
        matrix.set(row, column, there.real + value.real(), there.imaginary + value.imaginary());
    }

    private Phasor at(int row) {
        return new Phasor(solution.getReal(row, 0), solution.getImag(row, 0));
    }

    Phasor voltageV(int point) {
        return at(point);
    }

    Phasor branchA(int branch) {
        return at(points + branch);
    }

    Phasor shortA(int index) {
        return at(points + branches + index);
    }
}
