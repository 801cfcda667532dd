package tideover.engine.network.flow;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A network without loads, for faults anywhere in it: each fault is a small correction of the state before, never a new
 * solution. Not for several threads at once.
 */
public final class FaultNetwork {

    final FourWireNetwork network;
    private final Factors factors;
    final Response sources;
    private final @Nullable Response[] responses;

    /** What all e.m.f., or 1 A drawn at one point and returned at earth, do to the network. */
    static final class Response {
        final double[] xR;
        final double[] xX;
        final BranchCurrents currents;

        Response(double[] xR, double[] xX, BranchCurrents currents) {
            this.xR = xR;
            this.xX = xX;
            this.currents = currents;
        }
    }

    FaultNetwork(FourWireNetwork network) {
        this.network = network;
        Shape shape = network.shape;
        factors = new Factors(
                shape.elimination,
                shape.baseDiagonalR.clone(),
                shape.baseDiagonalX.clone(),
                shape.baseOffR.clone(),
                shape.baseOffX.clone());
        responses = new Response[network.pointCount];
        double[] xR = shape.baseRightR.clone();
        double[] xX = shape.baseRightX.clone();
        factors.solve(xR, xX);
        double[] drawnR = new double[network.pointCount];
        double[] drawnX = new double[network.pointCount];
        sources = new Response(xR, xX, new BranchCurrents(network, xR, xX, drawnR, drawnX, 1));
    }

    Response response(int point) {
        Response known = responses[point];
        if (known != null) return known;
        Shape shape = network.shape;
        double[] xR = new double[shape.baseRightR.length];
        double[] xX = new double[xR.length];
        int u = shape.unknown[point];
        if (u >= 0) {
            xR[u] = -1;
            factors.solve(xR, xX);
        }
        double[] drawnR = new double[network.pointCount];
        double[] drawnX = new double[network.pointCount];
        drawnR[point] = 1;
        Response response = new Response(xR, xX, new BranchCurrents(network, xR, xX, drawnR, drawnX, 0));
        responses[point] = response;
        return response;
    }

    /**
     * A fault.
     *
     * @param shorts connections it makes, one to four, each between two points
     * @throws IllegalArgumentException if there are none or more
     */
    public FaultFlow fault(List<Short> shorts) {
        if (shorts.isEmpty() || shorts.size() > 4)
            throw new IllegalArgumentException("a fault has one to four connections, not " + shorts.size());
        return new FaultFlow(this, shorts);
    }

    /** Voltage of a point to remote earth before any fault, r.m.s. [V]. */
    public Phasor voltageV(int point) {
        int u = network.shape.unknown[point];
        double r = network.shape.joints.offsetR[point];
        double x = network.shape.joints.offsetX[point];
        return u < 0 ? new Phasor(r, x) : new Phasor(r + sources.xR[u], x + sources.xX[u]);
    }

    /** What the voltage of one point loses when 1 A is drawn at another and returned at earth [Ω]. */
    Phasor transferOhm(int point, int drawnAt) {
        int u = network.shape.unknown[point];
        if (u < 0) return Phasor.ZERO;
        Response response = response(drawnAt);
        return new Phasor(-response.xR[u], -response.xX[u]);
    }
}
