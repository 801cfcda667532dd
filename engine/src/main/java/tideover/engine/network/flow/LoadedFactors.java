package tideover.engine.network.flow;

import java.util.Arrays;

/**
 * The equations of a network with its loads as the impedances they are at rated voltage, in factors. What loads draw
 * otherwise is a correction; corrections act on each other through a small part of the unknowns, and only that is solved
 * again and again.
 */
final class LoadedFactors {

    /** Admittance of each load in the equations. */
    final double[] stampedR;

    final double[] stampedX;

    /** Voltage over each load without corrections. */
    final double[] restR;

    final double[] restX;

    /** Where each load begins and ends among the unknowns of {@link #part}; -1 for earth. */
    final int[] from;

    final int[] to;
    final Factors part;
    final int partSize;

    private final Shape shape;
    private final LoadTable loads;
    private final Factors all;
    private final double[] freeR;
    private final double[] freeX;

    LoadedFactors(FourWireNetwork network) {
        shape = network.shape;
        loads = network.loads;
        int count = loads.count();
        stampedR = new double[count];
        stampedX = new double[count];
        freeR = shape.baseRightR.clone();
        freeX = shape.baseRightX.clone();
        all = factors();
        all.solve(freeR, freeX);
        boolean[] kept = new boolean[freeR.length];
        for (int i = 0; i < count; i++) {
            if (unknownFrom(i) >= 0) kept[unknownFrom(i)] = true;
            if (unknownTo(i) >= 0) kept[unknownTo(i)] = true;
        }
        all.close(kept);
        int[] position = new int[kept.length];
        Arrays.fill(position, -1);
        int size = 0;
        for (int k = 0; k < kept.length; k++) if (kept[k]) position[k] = size++;
        partSize = size;
        part = all.part(kept, position);
        from = new int[count];
        to = new int[count];
        restR = new double[count];
        restX = new double[count];
        for (int i = 0; i < count; i++) {
            int u = unknownFrom(i);
            int v = unknownTo(i);
            from[i] = u < 0 ? -1 : position[u];
            to[i] = v < 0 ? -1 : position[v];
            Phasor voltageV =
                    shape.voltageV(loads.from[i], freeR, freeX).minus(shape.voltageV(loads.to[i], freeR, freeX));
            restR[i] = voltageV.real();
            restX[i] = voltageV.imaginary();
        }
    }

    private int unknownFrom(int load) {
        return shape.unknown[loads.from[load]];
    }

    private int unknownTo(int load) {
        return shape.unknown[loads.to[load]];
    }

    /** What feeds or leads is no impedance, and enters only as a correction. */
    private Factors factors() {
        double[] diagonalR = shape.baseDiagonalR.clone();
        double[] diagonalX = shape.baseDiagonalX.clone();
        double[] offR = shape.baseOffR.clone();
        double[] offX = shape.baseOffX.clone();
        for (int i = 0; i < stampedR.length; i++) {
            int u = unknownFrom(i);
            int v = unknownTo(i);
            if (u == v) continue;
            double square = loads.ratedVoltageV[i] * loads.ratedVoltageV[i];
            double yR = Math.max(0, loads.powerW[i]) / square;
            double yX = -Math.max(0, loads.reactiveVar[i]) / square;
            stampedR[i] = yR;
            stampedX[i] = yX;
            // The impedance also sees the fixed voltages between joined points.
            double eR = shape.joints.offsetR[loads.from[i]] - shape.joints.offsetR[loads.to[i]];
            double eX = shape.joints.offsetX[loads.from[i]] - shape.joints.offsetX[loads.to[i]];
            double iR = yR * eR - yX * eX;
            double iX = yR * eX + yX * eR;
            if (u >= 0) {
                diagonalR[u] += yR;
                diagonalX[u] += yX;
                freeR[u] -= iR;
                freeX[u] -= iX;
            }
            if (v >= 0) {
                diagonalR[v] += yR;
                diagonalX[v] += yX;
                freeR[v] += iR;
                freeX[v] += iX;
            }
            if (u >= 0 && v >= 0) {
                int entry = shape.elimination.entry(u, v);
                offR[entry] -= yR;
                offX[entry] -= yX;
            }
        }
        return new Factors(shape.elimination, diagonalR, diagonalX, offR, offX);
    }

    /** All unknowns with corrections drawn by the loads, real parts before imaginary ones. */
    void solve(double[] correction, double[] xR, double[] xX) {
        for (int i = 0; i < stampedR.length; i++) {
            int u = unknownFrom(i);
            int v = unknownTo(i);
            if (u >= 0) {
                xR[u] -= correction[i];
                xX[u] -= correction[stampedR.length + i];
            }
            if (v >= 0) {
                xR[v] += correction[i];
                xX[v] += correction[stampedR.length + i];
            }
        }
        all.solve(xR, xX);
        for (int k = 0; k < xR.length; k++) {
            xR[k] += freeR[k];
            xX[k] += freeX[k];
        }
    }
}
