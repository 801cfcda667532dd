package tideover.engine.wiring.net;

import java.util.Arrays;
import tideover.engine.wiring.net.Edit.End;

/** Joints between nodes, by index: cores, contacts, busbars. A joint taken away has both ends at no node. */
public final class Joints {

    static final int NONE = -1;

    final int[] from;
    final int[] to;

    Joints(int[] from, int[] to) {
        this.from = from;
        this.to = to;
    }

    /** Number of joints. */
    public int count() {
        return from.length;
    }

    /** The node at one end. */
    public int node(int joint, End end) {
        return end == End.FROM ? from[joint] : to[joint];
    }

    /** A copy with the changes of an edit; what it joins anew is appended. */
    Joints with(Edit edit) {
        int added = 0;
        for (Edit.Change change : edit.changes()) if (change instanceof Edit.Joined) added++;
        int next = from.length;
        int[] newFrom = Arrays.copyOf(from, next + added);
        int[] newTo = Arrays.copyOf(to, next + added);
        for (Edit.Change change : edit.changes()) {
            if (change instanceof Edit.Opened opened) {
                newFrom[opened.joint()] = NONE;
                newTo[opened.joint()] = NONE;
            } else if (change instanceof Edit.Joined joined) {
                newFrom[next] = joined.nodeA();
                newTo[next++] = joined.nodeB();
            } else if (change instanceof Edit.Moved moved) {
                (moved.end() == End.FROM ? newFrom : newTo)[moved.joint()] = moved.node();
            }
        }
        return new Joints(newFrom, newTo);
    }
}
