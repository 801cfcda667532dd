package tideover.engine.network.flow;

import org.jspecify.annotations.Nullable;

/** Voltages and currents of a solved network. */
public final class Flow implements FlowResult {

    private final FourWireNetwork network;
    private final int iterations;
    private final double residualA;
    private final double[] xR;
    private final double[] xX;
    private final double[] loadR;
    private final double[] loadX;
    private @Nullable BranchCurrents currents;

    Flow(
            FourWireNetwork network,
            int iterations,
            double residualA,
            double[] xR,
            double[] xX,
            double[] loadR,
            double[] loadX) {
        this.network = network;
        this.iterations = iterations;
        this.residualA = residualA;
        this.xR = xR;
        this.xX = xX;
        this.loadR = loadR;
        this.loadX = loadX;
    }

    @Override
    public int iterations() {
        return iterations;
    }

    @Override
    public double residualA() {
        return residualA;
    }

    /** Voltage of a point to remote earth, r.m.s. [V]. */
    public Phasor voltageV(int point) {
        return network.shape.voltageV(point, xR, xX);
    }

    /** Voltage from one point to another, r.m.s. [V]. */
    public Phasor voltageV(int point, int reference) {
        return voltageV(point).minus(voltageV(reference));
    }

    /** Current of a branch from its beginning to its end, r.m.s. [A]. */
    public Phasor currentA(int branch) {
        BranchCurrents known = currents;
        if (known == null) {
            double[] drawnR = new double[network.pointCount];
            double[] drawnX = new double[network.pointCount];
            for (int i = 0; i < loadR.length; i++) {
                drawnR[network.loads.from[i]] += loadR[i];
                drawnX[network.loads.from[i]] += loadX[i];
                drawnR[network.loads.to[i]] -= loadR[i];
                drawnX[network.loads.to[i]] -= loadX[i];
            }
            currents = known = new BranchCurrents(network, xR, xX, drawnR, drawnX);
        }
        return known.of(branch);
    }

    /** Current through a load from its first point to its second, r.m.s. [A]. */
    public Phasor loadCurrentA(int load) {
        return new Phasor(loadR[load], loadX[load]);
    }

    /** Power a load takes at its voltage: active [W] and, as imaginary part, reactive [var]. */
    public Phasor loadPower(int load) {
        return voltageV(network.loads.from[load], network.loads.to[load])
                .times(loadCurrentA(load).conjugate());
    }

    /** Power a branch's source gives: active [W] and, as imaginary part, reactive [var]. */
    public Phasor sourcePower(int branch) {
        return new Phasor(network.emfR[branch], network.emfX[branch])
                .times(currentA(branch).conjugate());
    }

    /** Power lost between the points of a branch, its source aside [W]. */
    public double lossW(int branch) {
        Phasor overV = voltageV(network.from[branch], network.to[branch])
                .plus(new Phasor(network.emfR[branch], network.emfX[branch]));
        return overV.times(currentA(branch).conjugate()).real();
    }
}
