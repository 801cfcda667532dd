package tideover.papers.json;

import java.io.StringWriter;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.StatePicture;
import tideover.engine.network.Share;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.HouseFlowResult;
import tideover.engine.network.house.LostNeutral;
import tideover.engine.network.house.PlaceFlow;
import tideover.engine.network.house.Regime;
import tideover.engine.network.house.SourceLoading;
import tideover.engine.network.house.Unsolved;
import tideover.engine.protection.Clearing;
import tideover.engine.protection.DeviceBand;
import tideover.engine.protection.FaultCourse;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.PerLine;
import tideover.engine.site.ThingId;
import tideover.papers.FaultWording;
import tideover.papers.NetworkWording;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** What flows and what faults do as JSON for machines; the form is described in docs/network-json.md and only ever grows. */
public final class NetworkJson {

    /** Raised when a field changes its meaning or goes. */
    private static final int FORMAT = 1;

    private final NetworkAnswer answer;
    private final NetworkWording flows;
    private final FaultWording faults;

    public NetworkJson(NetworkAnswer answer) {
        this.answer = answer;
        this.flows = new NetworkWording(answer.wording(), answer.studies().installation());
        this.faults = new FaultWording(answer.wording(), answer.studies().installation());
    }

    /** The text, ending with a line break. */
    public String text() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(Json.PRETTY, text)) {
            json.writeStartObject();
            json.writeNumberProperty("format", FORMAT);
            json.writeStringProperty("program", ProgramVersion.text());
            json.writeStringProperty("site", answer.site().hex());
            json.writeStringProperty("rules", answer.rules().digest().hex());
            Json.array(json, "ruleBooks", answer.rules().layers(), layer -> layer);
            number(json, "faultResistanceOhm", answer.faultOhm());
            json.writeArrayPropertyStart("states");
            for (StatePicture picture : answer.pictures()) state(json, picture);
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    private void state(JsonGenerator json, StatePicture picture) {
        json.writeStartObject();
        json.writeStringProperty("state", picture.state().name());
        Json.array(json, "sources", picture.sources(), ThingId::text);
        Json.array(json, "missing", picture.missing(), FactId::toString);
        json.writeArrayPropertyStart("flows");
        flow(json, Regime.DRAWING, picture.drawing());
        flow(json, Regime.FEEDING, picture.feeding());
        json.writeEndArray();
        json.writeArrayPropertyStart("coincidence");
        for (Share share : picture.shares()) share(json, share);
        json.writeEndArray();
        json.writeArrayPropertyStart("interruptedNeutrals");
        for (LostNeutral lost : picture.lostNeutrals()) lostNeutral(json, lost);
        json.writeEndArray();
        json.writeArrayPropertyStart("faults");
        for (FaultCourse course : picture.faults()) fault(json, course);
        json.writeEndArray();
        json.writeEndObject();
    }

    private void flow(JsonGenerator json, Regime regime, @Nullable HouseFlowResult result) {
        if (result == null) return;
        json.writeStartObject();
        json.writeStringProperty("regime", regime.name());
        json.writeBooleanProperty("solved", result instanceof HouseFlow);
        if (result instanceof Unsolved unsolved) {
            json.writeNumberProperty("iterations", unsolved.iterations());
            Json.number(json, "residualA", unsolved.residualA());
            json.writeStringProperty("worst", unsolved.worst().text());
            json.writeStringProperty("sentence", flows.of(unsolved));
        } else if (result instanceof HouseFlow flow) {
            json.writeNumberProperty("iterations", flow.flow().iterations());
            Json.number(json, "residualA", flow.flow().residualA());
            number(json, "lossW", flow.lossW());
            json.writeArrayPropertyStart("sources");
            for (SourceLoading loading : flow.sources()) source(json, loading);
            json.writeEndArray();
            Json.array(json, "starved", flow.starved(), ThingId::text);
            Json.array(json, "sentences", flows.sources(flow), sentence -> sentence);
            json.writeArrayPropertyStart("places");
            for (PlaceFlow place : flow.places()) if (answer.isAsked(place.place())) place(json, place);
            json.writeEndArray();
        }
        json.writeEndObject();
    }

    private static void source(JsonGenerator json, SourceLoading loading) {
        json.writeStartObject();
        json.writeStringProperty("source", loading.source().text());
        perLine(json, "currentA", loading.currentA());
        number(json, "powerW", loading.powerW());
        number(json, "powerVa", loading.powerVa());
        number(json, "limitA", loading.limitA());
        number(json, "limitVa", loading.limitVa());
        json.writeBooleanProperty("supplied", loading.isSupplied());
        json.writeEndObject();
    }

    private void place(JsonGenerator json, PlaceFlow place) {
        json.writeStartObject();
        named(json, place.place());
        json.writeStringProperty("source", place.source().text());
        conductors(json, "voltageV", place.voltageV());
        conductors(json, "earthVoltageV", place.earthVoltageV());
        conductors(json, "currentA", place.currentA());
        number(json, "neutralThirdHarmonicA", place.neutralThirdHarmonicA());
        number(json, "neutralShiftV", place.neutralShiftV());
        number(json, "dropRatio", place.dropRatio());
        number(json, "unbalanceRatio", place.unbalanceRatio());
        number(json, "lossW", place.lossW());
        json.writeEndObject();
    }

    private static void share(JsonGenerator json, Share share) {
        json.writeStartObject();
        json.writeStringProperty("circuit", share.circuit().id().text());
        json.writeStringProperty("line", share.line().name());
        number(json, "currentA", share.currentA());
        number(json, "ratio", share.ratio());
        number(json, "addedA", share.addedA());
        json.writeStringProperty("reason", share.reason().name());
        json.writeEndObject();
    }

    private void lostNeutral(JsonGenerator json, LostNeutral lost) {
        json.writeStartObject();
        json.writeStringProperty("thing", lost.thing().text());
        json.writeStringProperty("place", lost.place().text());
        json.writeStringProperty("line", lost.line().name());
        number(json, "voltageV", lost.voltageV());
        json.writeStringProperty("sentence", flows.of(lost));
        json.writeEndObject();
    }

    private void fault(JsonGenerator json, FaultCourse course) {
        json.writeStartObject();
        named(json, course.place());
        json.writeStringProperty("kind", course.kind().name());
        Json.array(json, "lines", course.lines(), Conductor::name);
        json.writeStringProperty("extreme", course.extreme().name());
        json.writeStringProperty("source", course.source().text());
        json.writeStringProperty("answer", course.answer().name());
        number(json, "currentA", course.currentA());
        perLine(json, "sourceA", course.sourceA());
        number(json, "loopOhm", course.loopOhm());
        number(json, "voltageLeftV", course.voltageLeftV());
        number(json, "touchVoltageV", course.touchVoltageV());
        number(json, "protectiveA", course.protectiveA());
        number(json, "linkA", course.linkA());
        number(json, "earthA", course.earthA());
        json.writeArrayPropertyStart("devices");
        for (DeviceBand band : course.bands()) band(json, band);
        json.writeEndArray();
        clearing(json, course.clearing());
        Json.array(json, "dark", course.dark(), ThingId::text);
        Json.array(json, "missing", course.missing(), FactId::toString);
        json.writeStringProperty("sentence", faults.story(course));
        json.writeEndObject();
    }

    private static void band(JsonGenerator json, DeviceBand band) {
        json.writeStartObject();
        json.writeStringProperty("device", band.device().text());
        json.writeStringProperty("kind", band.kind().name());
        number(json, "currentA", band.currentA());
        number(json, "earliestS", band.earliestS());
        number(json, "latestS", band.latestS());
        json.writeEndObject();
    }

    private static void clearing(JsonGenerator json, Clearing clearing) {
        json.writeObjectPropertyStart("clearing");
        json.writeStringProperty("kind", kind(clearing));
        Json.text(json, "by", findBy(clearing).map(ThingId::text).orElse(null));
        number(json, "earliestS", clearing instanceof Clearing.ByDevice by ? (Double) by.earliestS() : null);
        number(json, "latestS", clearing.latestS());
        number(
                json,
                "voltageLeftV",
                clearing instanceof Clearing.BySourceShutdown by ? (Double) by.voltageLeftV() : null);
        json.writeEndObject();
    }

    /** The word for how a fault ends. */
    static String kind(Clearing clearing) {
        if (clearing instanceof Clearing.ByDevice by) return by.kind().name();
        if (clearing instanceof Clearing.BySourceShutdown) return "SOURCE_SHUTDOWN";
        return clearing instanceof Clearing.Unknown ? "UNKNOWN" : "NEVER";
    }

    /** The thing that ends it. */
    static Optional<ThingId> findBy(Clearing clearing) {
        if (clearing instanceof Clearing.ByDevice by) return Optional.of(by.device());
        if (clearing instanceof Clearing.BySourceShutdown by) return Optional.of(by.source());
        return Optional.empty();
    }

    private void named(JsonGenerator json, ThingId place) {
        json.writeStringProperty("place", place.text());
        json.writeStringProperty("placeName", answer.wording().name(place));
    }

    private static void perLine(JsonGenerator json, String name, PerLine values) {
        Map<Conductor, Double> map = new EnumMap<>(Conductor.class);
        map.put(Conductor.L1, values.l1());
        map.put(Conductor.L2, values.l2());
        map.put(Conductor.L3, values.l3());
        conductors(json, name, map);
    }

    private static void conductors(JsonGenerator json, String name, Map<Conductor, Double> values) {
        json.writeObjectPropertyStart(name);
        values.forEach((conductor, value) -> number(json, conductor.name(), value));
        json.writeEndObject();
    }

    private static void number(JsonGenerator json, String name, @Nullable Double value) {
        Json.number(json, name, NetworkAnswer.written(value));
    }
}
