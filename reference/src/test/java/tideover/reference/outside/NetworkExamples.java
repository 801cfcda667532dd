package tideover.reference.outside;

import java.util.List;
import tideover.engine.network.flow.FaultFlow;
import tideover.engine.network.flow.Flow;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.PowerLoad;
import tideover.engine.network.flow.Short;

/** Handbook examples of drops, neutral currents and faults, solved as the networks they are. */
final class NetworkExamples {

    private static final double NOMINAL_VOLTAGE_V = 230;

    private NetworkExamples() {}

    static double of(String quantity) {
        return switch (quantity) {
            case "WE01 mainDropLineToLineV" -> twoStages(Ends.MAIN_LINE_TO_LINE);
            case "WE01 branchDropV" -> twoStages(Ends.BRANCH);
            case "WE01 totalDropPercent" -> twoStages(Ends.BOTH) / NOMINAL_VOLTAGE_V * 100;
            case "WE05 neutralCurrentA" -> new Star(0, 1e-3).neutralA(List.of(5.0, 8.0, 10.0));
            case "WE07 faultCurrentA" -> faultBehindTransformerA();
            case "WE08 dropLineToLineV" -> new Star(1.1e-3 * 150 / Math.sqrt(3), 1e-3).dropLineToLineV(100);
            default -> throw new IllegalArgumentException("no example " + quantity);
        };
    }

    /** Which part of the way a drop is asked of. */
    private enum Ends {
        MAIN_LINE_TO_LINE,
        BRANCH,
        BOTH
    }

    private static double twoStages(Ends ends) {
        Star main = new Star(0.59e-3 * 50 / Math.sqrt(3), 1e-3);
        Phasor branchOhm = Phasor.of(19e-3 * 20 / 2);
        int[] lamp = new int[3];
        int[] back = new int[3];
        for (int line = 0; line < 3; line++) {
            lamp[line] = main.builder.point();
            back[line] = main.builder.point();
            main.builder.branch(main.end[line], lamp[line], branchOhm);
            main.builder.branch(back[line], main.endNeutral, branchOhm);
            main.draw(lamp[line], back[line], 20);
            main.draw(main.end[line], main.endNeutral, 130);
        }
        Flow flow = main.solve();
        double atMainV = flow.voltageV(main.end[0], main.endNeutral).magnitude();
        double atLampV = flow.voltageV(lamp[0], back[0]).magnitude();
        return switch (ends) {
            case MAIN_LINE_TO_LINE ->
                Math.sqrt(3) * NOMINAL_VOLTAGE_V
                        - flow.voltageV(main.end[0], main.end[1]).magnitude();
            case BRANCH -> atMainV - atLampV;
            case BOTH -> NOMINAL_VOLTAGE_V - atLampV;
        };
    }

    private static double faultBehindTransformerA() {
        FourWireNetwork.Builder builder = FourWireNetwork.builder();
        // Short-circuit voltage over rated current, all of it reactance: the example divides magnitudes.
        Phasor ohm = new Phasor(0, 0.04 * 420 * 420 / 400e3);
        int[] end = new int[3];
        for (int line = 0; line < 3; line++) {
            end[line] = builder.point();
            builder.source(FourWireNetwork.EARTH, end[line], Phasor.polar(420 / Math.sqrt(3), -120 * line), ohm);
        }
        FaultFlow fault =
                builder.build().faults().fault(List.of(new Short(end[0], end[1], 0), new Short(end[1], end[2], 0)));
        return fault.shortCurrentA(0).magnitude();
    }

    /** Three lines and a neutral from an ideal star to one end. */
    private static final class Star {
        private final FourWireNetwork.Builder builder = FourWireNetwork.builder();
        private final int[] end = new int[3];
        private final int endNeutral = builder.point();
        private final int neutralBranch;

        Star(double lineOhm, double neutralOhm) {
            for (int line = 0; line < 3; line++) {
                end[line] = builder.point();
                builder.source(
                        FourWireNetwork.EARTH,
                        end[line],
                        Phasor.polar(NOMINAL_VOLTAGE_V, -120 * line),
                        Phasor.of(lineOhm));
            }
            neutralBranch = builder.branch(endNeutral, FourWireNetwork.EARTH, Phasor.of(neutralOhm));
        }

        void draw(int from, int to, double currentA) {
            builder.load(new PowerLoad(from, to, currentA * NOMINAL_VOLTAGE_V, 0, NOMINAL_VOLTAGE_V, 0, 1, 0));
        }

        Flow solve() {
            if (builder.build().solve() instanceof Flow flow) return flow;
            throw new AssertionError("not solved");
        }

        double neutralA(List<Double> currentsA) {
            for (int line = 0; line < 3; line++) draw(end[line], endNeutral, currentsA.get(line));
            return solve().currentA(neutralBranch).magnitude();
        }

        double dropLineToLineV(double currentA) {
            for (int line = 0; line < 3; line++) draw(end[line], endNeutral, currentA);
            return Math.sqrt(3) * NOMINAL_VOLTAGE_V
                    - solve().voltageV(end[0], end[1]).magnitude();
        }
    }
}
