package tideover.engine.network.flow;

import org.jspecify.annotations.Nullable;

/**
 * Currents of branches from the voltages: by their impedance, as the unknown of a loop, or, where a branch has no
 * impedance, by what leaves the points beyond it. Worked out as they are asked for.
 */
final class BranchCurrents {

    private final FourWireNetwork network;
    private final Shape shape;
    private final double[] xR;
    private final double[] xX;
    private final double[] drawnR;
    private final double[] drawnX;
    private final @Nullable Phasor[] known;

    /** @param drawnR current that leaves each point by other ways than branches */
    BranchCurrents(FourWireNetwork network, double[] xR, double[] xX, double[] drawnR, double[] drawnX) {
        this.network = network;
        shape = network.shape;
        this.xR = xR;
        this.xX = xX;
        this.drawnR = drawnR;
        this.drawnX = drawnX;
        known = new Phasor[network.from.length];
    }

    /** Current of a branch from its beginning to its end [A]. */
    Phasor of(int branch) {
        Phasor current = known[branch];
        if (current != null) return current;
        if (shape.joints.outer[branch] >= 0) current = joining(branch);
        else if (shape.loop[branch] >= 0) current = new Phasor(xR[shape.loop[branch]], xX[shape.loop[branch]]);
        else if (network.isCoupled(branch)) current = coupled(branch);
        else current = new Phasor(shape.siemensR[branch], shape.siemensX[branch]).times(overV(branch));
        known[branch] = current;
        return current;
    }

    /** Kirchhoff's first law at the outer point. */
    private Phasor joining(int branch) {
        int point = shape.joints.outer[branch];
        double sumR = drawnR[point];
        double sumX = drawnX[point];
        for (int k = shape.joints.start[point]; k < shape.joints.start[point + 1]; k++) {
            int b = shape.joints.at[k];
            if (b == branch || network.from[b] == network.to[b]) continue;
            Phasor current = of(b);
            double sign = network.from[b] == point ? 1 : -1;
            sumR += sign * current.real();
            sumX += sign * current.imaginary();
        }
        double sign = network.to[branch] == point ? 1 : -1;
        return new Phasor(sign * sumR, sign * sumX);
    }

    /** What drives a current through a branch: the voltage between its points and its own e.m.f. */
    private Phasor overV(int branch) {
        int f = network.from[branch];
        int t = network.to[branch];
        int u = shape.unknown[f];
        int v = shape.unknown[t];
        double r = shape.joints.offsetR[f] - shape.joints.offsetR[t] + network.emfR[branch];
        double x = shape.joints.offsetX[f] - shape.joints.offsetX[t] + network.emfX[branch];
        if (u >= 0) {
            r += xR[u];
            x += xX[u];
        }
        if (v >= 0) {
            r -= xR[v];
            x -= xX[v];
        }
        return new Phasor(r, x);
    }

    private Phasor coupled(int branch) {
        Phasor sum = Phasor.ZERO;
        for (FourWireNetwork.Coupling coupling : network.couplings) {
            int row = coupling.branches().indexOf(branch);
            if (row < 0) continue;
            for (int j = 0; j < coupling.branches().size(); j++)
                sum = sum.plus(coupling.siemens()
                        .get(row)
                        .get(j)
                        .times(overV(coupling.branches().get(j))));
        }
        return sum;
    }
}
