package tideover.engine.network.flow;

import java.util.Arrays;

/**
 * What a network's shape decides once: unknowns and their order, and the equations without loads.
 *
 * <p>Unknowns are the voltages of groups of joined points, in an order that takes leaves first, and after them the
 * currents of branches that close a loop.
 */
final class Shape {

    /**
     * Conductance that ties a part without any connection to earth to it, spread over its points: sound insulation, 100 MΩ
     * (own choice).
     */
    private static final double INSULATION_S = 1e-8;

    /** Resistance of a contact that closes a loop without any other, so that its current is defined (own choice). */
    private static final double IDLE_CONTACT_OHM = 1e-3;

    final FourWireNetwork network;
    final Joints joints;

    /** Position of each point's voltage among the unknowns; -1 where it is earth's. */
    final int[] unknown;

    /** Position of the current of each branch that closes a loop among the unknowns, else -1. */
    final int[] loop;

    final double[] siemensR;
    final double[] siemensX;
    final int pointUnknowns;
    final Elimination elimination;
    final double[] baseDiagonalR;
    final double[] baseDiagonalX;
    final double[] baseOffR;
    final double[] baseOffX;
    final double[] baseRightR;
    final double[] baseRightX;

    Shape(FourWireNetwork network) {
        this.network = network;
        joints = new Joints(network);
        int branches = network.from.length;
        siemensR = new double[branches];
        siemensX = new double[branches];
        for (int b = 0; b < branches; b++) {
            double r = joints.idle[b] ? IDLE_CONTACT_OHM : network.ohmR[b];
            double x = network.ohmX[b];
            double square = r * r + x * x;
            if (square == 0) continue;
            siemensR[b] = r / square;
            siemensX[b] = -x / square;
        }
        double[] insulatedRatio = new double[joints.groupCount];
        boolean[] closing = new SpanningTree(network, joints).closing(insulatedRatio);
        pointUnknowns = joints.groupCount - 1;
        int[] number = new int[branches];
        Arrays.fill(number, -1);
        int loops = 0;
        for (int b = 0; b < branches; b++) if (closing[b]) number[b] = pointUnknowns + loops++;
        Order order = new Order(pointUnknowns, loops);
        for (int b = 0; b < branches; b++) {
            if (network.joins(b) || closing[b]) continue;
            order.connect(groupUnknown(network.from[b]), groupUnknown(network.to[b]));
        }
        for (FourWireNetwork.Coupling coupling : network.couplings)
            for (int one : coupling.branches())
                for (int two : coupling.branches())
                    for (int p : ends(one)) for (int q : ends(two)) order.connect(groupUnknown(p), groupUnknown(q));
        for (int i = 0; i < network.loads.count(); i++)
            order.connect(groupUnknown(network.loads.from[i]), groupUnknown(network.loads.to[i]));
        for (int b = 0; b < branches; b++) {
            if (!closing[b]) continue;
            order.connect(number[b], groupUnknown(network.from[b]));
            order.connect(number[b], groupUnknown(network.to[b]));
        }
        elimination = order.eliminate();
        unknown = new int[network.pointCount];
        for (int p = 0; p < network.pointCount; p++) {
            int u = groupUnknown(p);
            unknown[p] = u < 0 ? -1 : elimination.position[u];
        }
        loop = number;
        for (int b = 0; b < branches; b++) if (number[b] >= 0) loop[b] = elimination.position[number[b]];
        int size = pointUnknowns + loops;
        baseDiagonalR = new double[size];
        baseDiagonalX = new double[size];
        baseOffR = new double[elimination.entryCount()];
        baseOffX = new double[elimination.entryCount()];
        baseRightR = new double[size];
        baseRightX = new double[size];
        for (int g = 1; g < insulatedRatio.length; g++)
            baseDiagonalR[elimination.position[g - 1]] += INSULATION_S * insulatedRatio[g];
        for (int b = 0; b < branches; b++) {
            if (network.joins(b) || network.isCoupled(b)) continue;
            if (loop[b] >= 0) stampLoop(b);
            else stamp(b, b, siemensR[b], siemensX[b]);
        }
        for (FourWireNetwork.Coupling coupling : network.couplings) stamp(coupling);
    }

    /** Whether a load between two points enters the equations only where something connects them already. */
    boolean hasRoomFor(int from, int to) {
        int u = unknown[from];
        int v = unknown[to];
        return u < 0 || v < 0 || u == v || elimination.findEntry(u, v) >= 0;
    }

    /** Voltage of a point to earth from a solution [V]. */
    Phasor voltageV(int point, double[] xR, double[] xX) {
        int u = unknown[point];
        double r = joints.offsetR[point];
        double x = joints.offsetX[point];
        return u < 0 ? new Phasor(r, x) : new Phasor(r + xR[u], x + xX[u]);
    }

    private int[] ends(int branch) {
        return new int[] {network.from[branch], network.to[branch]};
    }

    private int groupUnknown(int point) {
        return joints.group[point] - 1;
    }

    private void stamp(FourWireNetwork.Coupling coupling) {
        for (int i = 0; i < coupling.branches().size(); i++)
            for (int j = 0; j < coupling.branches().size(); j++) {
                Phasor y = coupling.siemens().get(i).get(j);
                stamp(coupling.branches().get(i), coupling.branches().get(j), y.real(), y.imaginary());
            }
    }

    /** The voltage over one branch drives a current of y in another, mostly itself. */
    private void stamp(int driven, int driving, double yR, double yX) {
        int a = network.from[driven];
        int b = network.to[driven];
        int c = network.from[driving];
        int d = network.to[driving];
        add(unknown[a], unknown[c], yR, yX);
        add(unknown[a], unknown[d], -yR, -yX);
        add(unknown[b], unknown[c], -yR, -yX);
        add(unknown[b], unknown[d], yR, yX);
        double eR = joints.offsetR[c] + network.emfR[driving] - joints.offsetR[d];
        double eX = joints.offsetX[c] + network.emfX[driving] - joints.offsetX[d];
        double iR = yR * eR - yX * eX;
        double iX = yR * eX + yX * eR;
        addRight(unknown[a], -iR, -iX);
        addRight(unknown[b], iR, iX);
    }

    /** Each pair of unknowns is stored once: of the two equal entries only the one that comes first is added. */
    private void add(int row, int column, double yR, double yX) {
        if (row < 0 || column < 0) return;
        if (row == column) {
            baseDiagonalR[row] += yR;
            baseDiagonalX[row] += yX;
        } else if (row < column) {
            int entry = elimination.entry(row, column);
            baseOffR[entry] += yR;
            baseOffX[entry] += yX;
        }
    }

    private void addRight(int row, double iR, double iX) {
        if (row < 0) return;
        baseRightR[row] += iR;
        baseRightX[row] += iX;
    }

    private void stampLoop(int b) {
        int a = network.from[b];
        int c = network.to[b];
        int row = loop[b];
        if (unknown[a] >= 0) baseOffR[elimination.entry(unknown[a], row)] += 1;
        if (unknown[c] >= 0) baseOffR[elimination.entry(unknown[c], row)] -= 1;
        baseDiagonalR[row] = -network.ohmR[b];
        baseDiagonalX[row] = -network.ohmX[b];
        baseRightR[row] = -(joints.offsetR[a] + network.emfR[b] - joints.offsetR[c]);
        baseRightX[row] = -(joints.offsetX[a] + network.emfX[b] - joints.offsetX[c]);
    }
}
