package tideover.engine.installation;

import tideover.engine.site.Conductor;
import tideover.engine.site.Thing;

/**
 * A conductive connection between two nodes of the netlist.
 *
 * @param index     position in {@link Installation#edges()}
 * @param from      node nearer to the grid connection point
 * @param to        the other node
 * @param part      what it is
 * @param conductor of a run or contact: which one; of a link or bond: N or PE
 * @param thing     the thing it belongs to
 */
public record Edge(int index, int from, int to, Part part, Conductor conductor, Thing thing) {

    /** What an edge is made of. */
    public enum Part {
        /** Overcurrent device, residual current device and supply cable of a thing. */
        FEED,
        /** From the incoming to the outgoing terminals of a thing: busbar, meter, solid neutral. */
        THROUGH,
        /** A main contact of the islanding switch. */
        CONTACT,
        /** A pole of the by-pass. */
        BY_PASS,
        /** PEN to N, where a PEN is split. */
        SPLIT_NEUTRAL,
        /** PEN to PE, where a PEN is split. */
        SPLIT_EARTH,
        /** A fixed neutral–earth link. */
        LINK,
        /** The contact of the neutral–earth switch. */
        LINK_SWITCH,
        /** Protective conductor at the main earthing terminal. */
        BOND,
        /** An electrode of the house, to remote earth. */
        ELECTRODE,
        /** Earth of the network's neutral, to remote earth. */
        NETWORK_EARTH;

        /** Whether it ties a neutral to earth. */
        public boolean isNeutralToEarth() {
            return this == LINK || this == LINK_SWITCH || this == SPLIT_EARTH;
        }
    }

    /** Whether operating current may use it: a line or a neutral, no protective conductor or earth. */
    public boolean carriesLine() {
        return conductor.isLine();
    }

    /** Whether it is part of a neutral. */
    public boolean carriesNeutral() {
        return conductor.isNeutral() && !earthsNeutral();
    }

    /** Whether it ties a neutral to earth, at the house or at the network. Its neutral end is {@link #from}. */
    public boolean earthsNeutral() {
        return part.isNeutralToEarth() || part == Part.NETWORK_EARTH;
    }

    /** The node at the other end. */
    public int other(int node) {
        return node == from ? to : from;
    }
}
