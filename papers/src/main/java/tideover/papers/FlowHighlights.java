package tideover.papers;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.PlaceFlow;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Conductor;

/** What is worth a sentence of a flow: the neutral, what leaves its conductors, what stands at exposed parts. */
final class FlowHighlights {

    /** Less is nothing anyone would notice [A]. */
    private static final double NOTICEABLE_A = 0.05;

    private static final double NOTICEABLE_V = 1;

    private final Wording wording;
    private final HouseFlow flow;
    private final List<PlaceFlow> places;
    private final List<String> sentences = new ArrayList<>();

    FlowHighlights(Wording wording, HouseFlow flow) {
        this.wording = wording;
        this.flow = flow;
        this.places = flow.places();
    }

    /** What flows and stands where nothing should while all is sound. */
    List<String> astray() {
        sentences.clear();
        starved();
        outside();
        return List.copyOf(sentences);
    }

    /** All of it. */
    List<String> sentences() {
        sentences.clear();
        starved();
        neutral();
        places.stream()
                .filter(place -> place.unbalanceRatio() != null && place.unbalanceRatio() > 1e-4)
                .max(Comparator.comparingDouble(place -> orZero(place.unbalanceRatio())))
                .ifPresent(
                        place -> say("network.unbalance", place, amount(orZero(place.unbalanceRatio()), Unit.PERCENT)));
        places.stream()
                .filter(place -> orZero(place.neutralShiftV()) >= NOTICEABLE_V)
                .max(Comparator.comparingDouble(place -> orZero(place.neutralShiftV())))
                .ifPresent(place -> say("network.shift", place, amount(orZero(place.neutralShiftV()), Unit.V)));
        outside();
        return List.copyOf(sentences);
    }

    private void starved() {
        if (!flow.starved().isEmpty()) sentences.add(wording.text("network.starved", PhraseArg.names(flow.starved())));
    }

    private void neutral() {
        places.stream()
                .filter(place -> place.voltageV().size() > 1 && place.neutralA() >= NOTICEABLE_A)
                .max(Comparator.comparingDouble(PlaceFlow::neutralA))
                .ifPresent(place -> say("network.neutral", place, amount(place.neutralA(), Unit.A)));
        places.stream()
                .filter(place -> place.neutralThirdHarmonicA() >= NOTICEABLE_A)
                .max(Comparator.comparingDouble(PlaceFlow::neutralThirdHarmonicA))
                .ifPresent(place -> say(
                        "network.neutral.harmonics",
                        place,
                        amount(place.neutralThirdHarmonicA(), Unit.A),
                        amount(place.neutralA(), Unit.A)));
    }

    private void outside() {
        for (Edge edge : flow.house().installation().edges()) {
            double currentA = flow.currentA(edge).magnitude();
            if (currentA < NOTICEABLE_A) continue;
            boolean link = edge.part() == Edge.Part.LINK || edge.part() == Edge.Part.LINK_SWITCH;
            if (link || edge.part() == Edge.Part.ELECTRODE)
                sentences.add(wording.text(
                        link ? "network.link" : "network.electrode",
                        name(edge.thing().id()),
                        amount(currentA, Unit.A)));
        }
        places.stream()
                .filter(place -> place.currentA(Conductor.PE) >= NOTICEABLE_A)
                .max(Comparator.comparingDouble(place -> place.currentA(Conductor.PE)))
                .ifPresent(place -> say("network.protective", place, amount(place.currentA(Conductor.PE), Unit.A)));
        places.stream()
                .filter(place -> exposedV(place) >= NOTICEABLE_V)
                .max(Comparator.comparingDouble(FlowHighlights::exposedV))
                .ifPresent(place -> say("network.exposed", place, amount(exposedV(place), Unit.V)));
    }

    private static double exposedV(PlaceFlow place) {
        return Math.max(
                orZero(place.earthVoltageV().get(Conductor.PE)),
                orZero(place.earthVoltageV().get(Conductor.PEN)));
    }

    private void say(String key, PlaceFlow place, PhraseArg... more) {
        PhraseArg[] arguments = new PhraseArg[more.length + 1];
        arguments[0] = name(place.place());
        System.arraycopy(more, 0, arguments, 1, more.length);
        sentences.add(wording.text(key, arguments));
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}
