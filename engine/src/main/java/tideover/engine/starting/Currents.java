package tideover.engine.starting;

import java.util.List;
import tideover.engine.network.flow.Phasor;
import tideover.engine.site.Conductor;

/** Currents of the three lines, each against the voltage of its own line, r.m.s. [A]; lagging is negative imaginary. */
record Currents(Phasor l1, Phasor l2, Phasor l3) {

    static final Currents ZERO = new Currents(Phasor.ZERO, Phasor.ZERO, Phasor.ZERO);

    /** The same current on some lines. */
    static Currents on(List<Conductor> lines, double currentA, double powerFactorRatio) {
        Currents sum = ZERO;
        for (Conductor line : lines) sum = sum.plus(line, lagging(currentA, powerFactorRatio));
        return sum;
    }

    static Phasor lagging(double currentA, double powerFactorRatio) {
        return new Phasor(
                currentA * powerFactorRatio,
                -currentA * Math.sqrt(Math.max(0, 1 - powerFactorRatio * powerFactorRatio)));
    }

    Currents plus(Currents other) {
        return new Currents(l1.plus(other.l1), l2.plus(other.l2), l3.plus(other.l3));
    }

    Currents plus(Conductor line, Phasor currentA) {
        return new Currents(
                line == Conductor.L1 ? l1.plus(currentA) : l1,
                line == Conductor.L2 ? l2.plus(currentA) : l2,
                line == Conductor.L3 ? l3.plus(currentA) : l3);
    }

    /** Mean of the currents of some lines, r.m.s. [A]. */
    double meanA(List<Conductor> lines) {
        double sumA = 0;
        for (Conductor line : lines) sumA += of(line).magnitude();
        return sumA / lines.size();
    }

    private Phasor of(Conductor line) {
        return line == Conductor.L1 ? l1 : line == Conductor.L2 ? l2 : l3;
    }
}
