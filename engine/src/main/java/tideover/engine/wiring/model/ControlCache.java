package tideover.engine.wiring.model;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.wiring.net.SwitchingNet;

/** Solutions of one control net, found again by contacts and live potentials. */
final class ControlCache {

    /** A house comes through some dozens; a search through more begins anew. */
    private static final int MOST = 128;

    /** What is joined to what, and whether a supply feeds a short-circuit there. */
    static final class Solution {
        private final long contacts;
        private final int live;
        final SwitchingNet.Solved nets;
        final boolean isShorted;

        private Solution(long contacts, int live, SwitchingNet.Solved nets, boolean isShorted) {
            this.contacts = contacts;
            this.live = live;
            this.nets = nets;
            this.isShorted = isShorted;
        }
    }

    private final ControlModel control;
    private final SwitchingNet net;
    private final List<Solution> known = new ArrayList<>();

    ControlCache(ControlModel control, SwitchingNet net) {
        this.control = control;
        this.net = net;
    }

    /** The solution; a supply that feeds a short-circuit, or that a line conductor has got at, gives nothing. */
    Solution solve(long contacts, int live) {
        for (int i = 0; i < known.size(); i++) {
            Solution solution = known.get(i);
            if (solution.contacts == contacts && solution.live == live) return solution;
        }
        if (known.size() == MOST) known.clear();
        SwitchingNet.Solved nets = net.solved();
        net.solve(contacts, live, nets);
        int left = live;
        for (int i = 0; i < control.supplies().size(); i++)
            if (isShorted(nets, i)) left &= ~(1 << ControlModel.plusBit(i) | 1 << ControlModel.minusBit(i));
        if (left != live) net.solve(contacts, left, nets);
        Solution solution = new Solution(contacts, live, nets, left != live);
        known.add(solution);
        return solution;
    }

    private boolean isShorted(SwitchingNet.Solved nets, int supply) {
        int plus = 1 << ControlModel.plusBit(supply);
        int minus = 1 << ControlModel.minusBit(supply);
        int mains = 1 << ControlModel.MAINS;
        int atPlus = nets.potentials(control.supplies().get(supply).plus());
        int atMinus = nets.potentials(control.supplies().get(supply).minus());
        return (atPlus & plus) != 0 && (atPlus & minus) != 0 || ((atPlus | atMinus) & mains) != 0;
    }
}
