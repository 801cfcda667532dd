package tideover.reference.network;

import java.util.List;
import tideover.engine.network.flow.FaultFlow;
import tideover.engine.network.flow.Flow;
import tideover.engine.network.flow.FlowResult;
import tideover.engine.network.flow.Phasor;

/** What ours says about a case, flow or fault alike. */
interface Solved {

    Phasor voltageV(int point);

    Phasor branchA(int branch);

    Phasor shortA(int index);

    Phasor loadA(int load);

    /** What a limited source leaves of the e.m.f.; 1 where nothing is limited. */
    double emfRatio();

    /** @throws AssertionError if ours finds no solution */
    static Solved of(NetworkCase one) {
        return one.fault() ? new InFault(one) : new InFlow(one);
    }

    final class InFlow implements Solved {
        private final Flow flow;

        InFlow(NetworkCase one) {
            FlowResult result = one.network().solve();
            if (!(result instanceof Flow solved)) throw new AssertionError(one + ": " + result);
            flow = solved;
        }

        @Override
        public Phasor voltageV(int point) {
            return flow.voltageV(point);
        }

        @Override
        public Phasor branchA(int branch) {
            return flow.currentA(branch);
        }

        @Override
        public Phasor shortA(int index) {
            throw new AssertionError("a flow has no shorts");
        }

        @Override
        public double emfRatio() {
            return 1;
        }

        @Override
        public Phasor loadA(int load) {
            return flow.loadCurrentA(load);
        }
    }

    final class InFault implements Solved {
        private final FaultFlow fault;
        private final double ratio;

        InFault(NetworkCase one) {
            FaultFlow free =
                    one.network().faults().fault(List.copyOf(one.shorts().values()));
            ratio = one.limitA().entrySet().stream()
                    .mapToDouble(limit ->
                            limit.getValue() / free.currentA(limit.getKey()).magnitude())
                    .reduce(1, Math::min);
            fault = free.lowered(ratio);
        }

        @Override
        public Phasor voltageV(int point) {
            return fault.voltageV(point);
        }

        @Override
        public Phasor branchA(int branch) {
            return fault.currentA(branch);
        }

        @Override
        public Phasor shortA(int index) {
            return fault.shortCurrentA(index);
        }

        @Override
        public double emfRatio() {
            return ratio;
        }

        @Override
        public Phasor loadA(int load) {
            throw new AssertionError("a fault has no loads");
        }
    }
}
