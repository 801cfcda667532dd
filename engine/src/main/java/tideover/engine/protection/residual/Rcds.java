package tideover.engine.protection.residual;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.installation.Path;
import tideover.engine.installation.View;
import tideover.engine.rules.Check;
import tideover.engine.site.Circuit;
import tideover.engine.site.Converter;
import tideover.engine.site.Fed;
import tideover.engine.site.Load;
import tideover.engine.site.OperatingState;
import tideover.engine.site.RcdType;
import tideover.engine.site.ResidualDevice;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** What several checks ask of residual current devices. */
final class Rcds {

    /** RCD findings are never met on an assumption. */
    static final Check.OnAssumption ON_ASSUMPTION = Check.OnAssumption.STAYS_OPEN;

    private Rcds() {}

    /** All things that hold a residual current device. */
    static List<Fed> all(Installation installation) {
        List<Fed> all = new ArrayList<>();
        for (Thing thing : installation.things()) if (thing instanceof Fed fed && fed.rcd() != null) all.add(fed);
        return all;
    }

    /** The device of a thing that holds one. */
    static ResidualDevice device(Fed holder) {
        ResidualDevice device = holder.rcd();
        if (device == null) throw new IllegalArgumentException(holder.id() + " holds no RCD");
        return device;
    }

    /** Circuits fed through a device in the connected mode. */
    static List<Circuit> circuitsBehind(Installation installation, Fed holder) {
        List<Circuit> behind = new ArrayList<>();
        for (Circuit circuit : installation.circuits())
            if (circuit.id().equals(holder.id()) || installation.isBehind(circuit, holder.id())) behind.add(circuit);
        return behind;
    }

    /** Whether island operation or the plan touches a device or anything fed through it. */
    static boolean isTouched(Installation installation, Fed holder) {
        if (installation.isTouched(holder)
                || !installation.sourcesBehind(holder.id()).isEmpty()) return true;
        for (Circuit circuit : circuitsBehind(installation, holder)) if (installation.isTouched(circuit)) return true;
        return false;
    }

    /** Devices on the way of a thing's first live line in a state, from the source on; empty where it has no voltage. */
    static List<Fed> onWay(Installation installation, Fed thing, OperatingState state) {
        View view = installation.in(state);
        ThingId source = view.findSource(thing).orElse(null);
        if (source == null) return List.of();
        return view.findLinePath(source, thing.id(), view.liveLines(thing).get(0))
                .map(Path::rcds)
                .orElse(List.of());
    }

    /** The states in which a thing has voltage. */
    static List<OperatingState> liveStates(Installation installation, Fed thing) {
        List<OperatingState> live = new ArrayList<>();
        for (OperatingState state : installation.states())
            if (installation.in(state).findSource(thing).isPresent()) live.add(state);
        return live;
    }

    /**
     * The type of RCD a load needs: what its maker states, else F for single-phase converters and B where smooth d.c. can
     * flow.
     *
     * @return nothing where neither is known
     */
    static @Nullable RcdType needed(@Nullable Load load) {
        if (load == null) return null;
        if (load.residualType() != null) return load.residualType();
        Converter converter = load.converter();
        if (converter == null) return null;
        return switch (converter) {
            case NONE -> RcdType.AC;
            case SINGLE_PHASE -> RcdType.F;
            case SMOOTH_DC -> RcdType.B;
        };
    }
}
