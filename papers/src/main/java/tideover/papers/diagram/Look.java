package tideover.papers.diagram;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Symbols.Position;
import tideover.papers.drawing.Weight;

/** How things look in one operating state, or in none: then all conductors alike and all driven contacts open. */
final class Look {

    private final @Nullable View view;
    private final Installation installation;

    private Look(Installation installation, @Nullable View view) {
        this.installation = installation;
        this.view = view;
    }

    static Look ofNoState(Installation installation) {
        return new Look(installation, null);
    }

    static Look in(Installation installation, OperatingState state) {
        return new Look(installation, installation.in(state));
    }

    /** Colour of a thing on its side: grey without voltage. */
    Ink ink(Thing thing, Side side) {
        return weight(thing) == Weight.DEAD ? Ink.DEAD : side.ink();
    }

    /** Weight of the conductors at a thing. */
    Weight weight(Thing thing) {
        if (view == null) return Weight.NORMAL;
        return isLive(thing, view) ? Weight.STRONG : Weight.DEAD;
    }

    private static boolean isLive(Thing thing, View view) {
        if (thing.id().equals(ThingId.SUPPLY)) return view.state().isGridLive();
        return !(thing instanceof Fed fed) || !view.liveLines(fed).isEmpty();
    }

    /** The lines of a circuit that have voltage, where not all of them have; empty otherwise. */
    List<Conductor> onlyLiveLines(Fed thing) {
        if (view == null) return List.of();
        List<Conductor> live = view.liveLines(thing);
        return live.size() == view.lines(thing).size() ? List.of() : live;
    }

    /** Where the contacts of a switch, a by-pass or a neutral–earth switch stand. */
    Position position(Thing device) {
        if (view == null) return Position.OPEN;
        for (Edge edge : installation.edges())
            if (edge.thing() == device && isContact(edge) && view.isClosed(edge)) return Position.CLOSED;
        return Position.OPEN;
    }

    private static boolean isContact(Edge edge) {
        return switch (edge.part()) {
            case CONTACT, BY_PASS, LINK_SWITCH -> true;
            default -> false;
        };
    }

    /** Where devices worked by hand stand: drawn open, as is usual, unless a state is shown, in which all are closed. */
    Position handPosition() {
        return view == null ? Position.OPEN : Position.CLOSED;
    }

    /** Whether a state is drawn; without one no contact position is put into words. */
    boolean isInState() {
        return view != null;
    }
}
