package tideover.engine.wiring.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import tideover.engine.wiring.net.Nets;
import tideover.engine.wiring.net.PowerNet;

/** Solutions of one power net, found again by the position of contacts. */
final class NetsCache {

    private static final class Entry {
        private final long closed;
        private final int live;
        private final long[] tripped;
        private final Nets nets;

        private Entry(long closed, int live, long[] tripped, Nets nets) {
            this.closed = closed;
            this.live = live;
            this.tripped = tripped;
            this.nets = nets;
        }
    }

    private final PowerNet net;
    private final List<Entry> entries = new ArrayList<>();

    NetsCache(PowerNet net) {
        this.net = net;
    }

    Nets solve(long closed, int live, long[] tripped) {
        for (Entry entry : entries)
            if (entry.closed == closed && entry.live == live && Arrays.equals(entry.tripped, tripped))
                return entry.nets;
        Nets nets = net.solve(closed, live, tripped);
        entries.add(new Entry(closed, live, tripped.clone(), nets));
        return nets;
    }

    PowerNet net() {
        return net;
    }
}
