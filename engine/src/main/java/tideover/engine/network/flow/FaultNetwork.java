package tideover.engine.network.flow;

import java.util.List;

/** A network without loads, ready for faults anywhere in it: each is a small correction of the state before. */
public final class FaultNetwork {

    final FourWireNetwork network;
    final Factors factors;
    final double[] xR;
    final double[] xX;

    FaultNetwork(FourWireNetwork network) {
        this.network = network;
        Shape shape = network.shape;
        factors = new Factors(
                shape.elimination,
                shape.baseDiagonalR.clone(),
                shape.baseDiagonalX.clone(),
                shape.baseOffR.clone(),
                shape.baseOffX.clone());
        xR = shape.baseRightR.clone();
        xX = shape.baseRightX.clone();
        factors.solve(xR, xX);
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
        return new FaultFlow(this, shorts, 0);
    }

    /**
     * A fault of three points, each over its own resistance to a common one.
     *
     * @param faultOhm resistance at each, 0 where bolted [Ω]
     * @return the first connection carries what leaves the first point, the second what enters the third
     */
    public FaultFlow fault(int first, int second, int third, double faultOhm) {
        double each = Math.max(faultOhm, FaultFlow.BOLTED_OHM);
        return new FaultFlow(
                this, List.of(new Short(first, second, 2 * each), new Short(second, third, 2 * each)), -each);
    }

    /** Voltage of a point to remote earth before any fault, r.m.s. [V]. */
    public Phasor voltageV(int point) {
        return network.shape.voltageV(point, xR, xX);
    }
}
