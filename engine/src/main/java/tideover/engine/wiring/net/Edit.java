package tideover.engine.wiring.net;

import java.util.ArrayList;
import java.util.List;

/**
 * What a mistake does to the joints of a net.
 *
 * @param changes carried out one after the other
 */
public record Edit(List<Change> changes) {

    /** Nothing. */
    public static final Edit NONE = new Edit(List.of());

    public Edit {
        changes = List.copyOf(changes);
    }

    /** One change. */
    public sealed interface Change {}

    /** A joint is taken away. */
    public record Opened(int joint) implements Change {}

    /** Two nodes are joined that should not be. */
    public record Joined(int nodeA, int nodeB) implements Change {}

    /** One end of a joint is at another node. */
    public record Moved(int joint, End end, int node) implements Change {}

    /** Which end of a joint. */
    public enum End {
        FROM,
        TO
    }

    public static Edit opened(int joint) {
        return new Edit(List.of(new Opened(joint)));
    }

    public static Edit joined(int nodeA, int nodeB) {
        return new Edit(List.of(new Joined(nodeA, nodeB)));
    }

    public static Edit moved(int joint, End end, int node) {
        return new Edit(List.of(new Moved(joint, end, node)));
    }

    /** Two ends of joints change places. */
    public static Edit exchanged(Joints joints, int jointA, End endA, int jointB, End endB) {
        return new Edit(List.of(
                new Moved(jointA, endA, joints.node(jointB, endB)),
                new Moved(jointB, endB, joints.node(jointA, endA))));
    }

    /** Both, one after the other. */
    public Edit and(Edit other) {
        List<Change> all = new ArrayList<>(changes);
        all.addAll(other.changes);
        return new Edit(all);
    }

    /** Whether nothing changes. */
    public boolean isNone() {
        return changes.isEmpty();
    }
}
