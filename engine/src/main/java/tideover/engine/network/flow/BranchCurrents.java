package tideover.engine.network.flow;

/**
 * Currents of all branches from the voltages: by their impedance, as the unknown of a loop, or, where a branch has no
 * impedance, by what the points beyond it draw.
 */
final class BranchCurrents {

    private final double[] currentR;
    private final double[] currentX;

    /**
     * @param drawnR current that leaves each point by other ways than branches; overwritten
     * @param withSources 1 with all e.m.f. on, 0 with all off
     */
    BranchCurrents(
            FourWireNetwork network, double[] xR, double[] xX, double[] drawnR, double[] drawnX, int withSources) {
        Shape shape = network.shape;
        int count = network.from.length;
        currentR = new double[count];
        currentX = new double[count];
        double[] overR = new double[network.couplings.isEmpty() ? 0 : count];
        double[] overX = new double[overR.length];
        for (int b = 0; b < count; b++) {
            if (network.joins(b) && !shape.joints.idle[b]) continue;
            int f = network.from[b];
            int t = network.to[b];
            if (shape.loop[b] >= 0) {
                currentR[b] = xR[shape.loop[b]];
                currentX[b] = xX[shape.loop[b]];
            } else {
                int u = shape.unknown[f];
                int v = shape.unknown[t];
                double r = withSources * (shape.joints.offsetR[f] - shape.joints.offsetR[t] + network.emfR[b]);
                double x = withSources * (shape.joints.offsetX[f] - shape.joints.offsetX[t] + network.emfX[b]);
                if (u >= 0) {
                    r += xR[u];
                    x += xX[u];
                }
                if (v >= 0) {
                    r -= xR[v];
                    x -= xX[v];
                }
                if (network.isCoupled(b)) {
                    overR[b] = r;
                    overX[b] = x;
                    continue;
                }
                currentR[b] = shape.siemensR[b] * r - shape.siemensX[b] * x;
                currentX[b] = shape.siemensR[b] * x + shape.siemensX[b] * r;
            }
            drawnR[f] += currentR[b];
            drawnX[f] += currentX[b];
            drawnR[t] -= currentR[b];
            drawnX[t] -= currentX[b];
        }
        for (FourWireNetwork.Coupling coupling : network.couplings)
            add(network, coupling, overR, overX, drawnR, drawnX);
        int[] inward = shape.joints.inward;
        int[] outer = shape.joints.outer;
        for (int i = 0; i < inward.length; i++) {
            int b = inward[i];
            int point = outer[i];
            boolean ends = network.to[b] == point;
            double r = drawnR[point];
            double x = drawnX[point];
            currentR[b] = ends ? r : -r;
            currentX[b] = ends ? x : -x;
            int inner = ends ? network.from[b] : network.to[b];
            drawnR[inner] += r;
            drawnX[inner] += x;
        }
    }

    private void add(
            FourWireNetwork network,
            FourWireNetwork.Coupling coupling,
            double[] overR,
            double[] overX,
            double[] drawnR,
            double[] drawnX) {
        for (int i = 0; i < coupling.branches().size(); i++) {
            int b = coupling.branches().get(i);
            for (int j = 0; j < coupling.branches().size(); j++) {
                Phasor y = coupling.siemens().get(i).get(j);
                int d = coupling.branches().get(j);
                currentR[b] += y.real() * overR[d] - y.imaginary() * overX[d];
                currentX[b] += y.real() * overX[d] + y.imaginary() * overR[d];
            }
            drawnR[network.from[b]] += currentR[b];
            drawnX[network.from[b]] += currentX[b];
            drawnR[network.to[b]] -= currentR[b];
            drawnX[network.to[b]] -= currentX[b];
        }
    }

    Phasor of(int branch) {
        return new Phasor(currentR[branch], currentX[branch]);
    }

    double real(int branch) {
        return currentR[branch];
    }

    double imaginary(int branch) {
        return currentX[branch];
    }
}
