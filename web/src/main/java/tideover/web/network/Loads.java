package tideover.web.network;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.Share;
import tideover.engine.network.house.FlowStudy;
import tideover.engine.network.house.HouseLoad;
import tideover.engine.site.Circuit;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * Which circuits are taken to be turned off; all others are on.
 *
 * @param off as an address names them
 */
record Loads(Set<ThingId> off) {
    Loads {
        off = Set.copyOf(off);
    }

    /**
     * What an address says: {@code off} for each that is off, or, as forms send nothing for what is not ticked, {@code on} for
     * each that is on of those {@code offered}.
     */
    static Loads of(HttpServletRequest request) {
        Set<ThingId> off = ids(request, "off");
        off.addAll(ids(request, "offered"));
        off.removeAll(ids(request, "on"));
        return new Loads(off);
    }

    private static Set<ThingId> ids(HttpServletRequest request, String name) {
        Set<ThingId> ids = new LinkedHashSet<>();
        String[] named = request.getParameterValues(name);
        if (named != null)
            for (String several : named)
                for (String id : several.split(",")) if (ThingId.isWellFormed(id)) ids.add(new ThingId(id));
        return ids;
    }

    boolean isOn(Circuit circuit) {
        return !off.contains(circuit.id());
    }

    boolean isAllOn() {
        return off.isEmpty();
    }

    /** What stands behind the state in an address; empty where all are on. */
    String query() {
        return off.isEmpty()
                ? ""
                : "&off=" + off.stream().sorted().map(ThingId::text).collect(Collectors.joining(","));
    }

    /** Circuits that have voltage in a state. */
    static List<Circuit> live(Installation installation, OperatingState state) {
        View view = installation.in(state);
        return installation.circuits().stream()
                .filter(circuit -> view.findSource(circuit).isPresent())
                .toList();
    }

    /** What each circuit that is on adds to the worst credible coincidence of those on its source. */
    List<Share> shares(Installation installation, FlowStudy flow, OperatingState state) {
        View view = installation.in(state);
        Map<ThingId, List<Circuit>> bySource = new LinkedHashMap<>();
        for (Circuit circuit : live(installation, state))
            if (isOn(circuit))
                bySource.computeIfAbsent(view.findSource(circuit).orElseThrow(), source -> new ArrayList<>())
                        .add(circuit);
        List<Share> shares = new ArrayList<>();
        for (List<Circuit> together : bySource.values())
            shares.addAll(flow.demand().shares(together));
        return shares;
    }

    /** The same as loads of a study. */
    static List<HouseLoad> drawn(FlowStudy flow, List<Share> shares) {
        return shares.stream()
                .map(share -> flow.load(share.circuit(), share.line(), share.addedA()))
                .toList();
    }
}
