package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.installation.Installation;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.PlaceFlow;
import tideover.engine.network.house.SourceLoading;
import tideover.engine.rules.Unit;
import tideover.engine.site.Conductor;
import tideover.engine.site.ThingId;
import tideover.papers.Wording;

/** What flows and stands in one operating state, as short notes for the diagram: "L1 6.2 A · 227 V". */
public final class FlowNotes {

    /** Steps in which currents are noted: finer than any clamp meter is sure of. */
    private static final double STEPS_PER_A = 10;

    private final Wording wording;
    private final Installation installation;

    private FlowNotes(Wording wording, Installation installation) {
        this.wording = wording;
        this.installation = installation;
    }

    /** A note for each source and each thing that has voltage: currents of the lines, and their voltage to neutral. */
    public static Map<ThingId, String> of(HouseFlow flow, Wording wording) {
        FlowNotes notes = new FlowNotes(wording, flow.house().installation());
        Map<ThingId, String> all = new LinkedHashMap<>();
        for (PlaceFlow place : flow.places()) all.put(place.place(), notes.place(place));
        for (SourceLoading loading : flow.sources()) all.put(loading.source(), notes.source(loading));
        return all;
    }

    private String place(PlaceFlow place) {
        List<String> parts = new ArrayList<>();
        for (Conductor line : place.currentA().keySet())
            if (line.isLine()) parts.add(current(line, place.currentA(line)));
        if (!place.voltageV().isEmpty()) parts.add(voltage(place.voltageV().values()));
        return joined(parts);
    }

    private String source(SourceLoading loading) {
        List<String> parts = new ArrayList<>();
        for (Conductor line : installation.lines(loading.source()))
            parts.add(current(line, loading.currentA().of(line)));
        parts.add(wording.amount(loading.powerVa(), Unit.VA));
        return joined(parts);
    }

    private String current(Conductor line, double currentA) {
        return wording.word(line) + " " + wording.amount(Math.round(currentA * STEPS_PER_A) / STEPS_PER_A, Unit.A);
    }

    /** One figure where all lines show the same, else from the lowest to the highest. */
    private String voltage(Collection<Double> voltagesV) {
        String lowest = wording.amount(Collections.min(voltagesV), Unit.RATIO);
        String highest = wording.amount(Collections.max(voltagesV), Unit.RATIO);
        String highestV = wording.amount(Collections.max(voltagesV), Unit.V);
        return lowest.equals(highest) ? highestV : lowest + "–" + highestV;
    }

    /** A figure is never parted from its line and its unit. */
    private static String joined(List<String> parts) {
        return String.join(
                "\u00a0· ",
                parts.stream().map(part -> part.replace(' ', '\u00a0')).toList());
    }
}
