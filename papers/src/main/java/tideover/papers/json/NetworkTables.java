package tideover.papers.json;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.StatePicture;
import tideover.engine.installation.Edge;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.PlaceFlow;
import tideover.engine.protection.Clearing;
import tideover.engine.protection.FaultCourse;
import tideover.engine.site.Conductor;
import tideover.engine.site.ThingId;

/** Nodes, branches and faults as tables (CSV after RFC 4180, lines end with a line feed); described in docs/network-json.md. */
public final class NetworkTables {

    private final NetworkAnswer answer;

    public NetworkTables(NetworkAnswer answer) {
        this.answer = answer;
    }

    /** Each conductor at each place. */
    public String nodes() {
        Rows rows = new Rows(
                "state,regime,place,conductor,earthVoltageV,earthAngleDeg,neutralVoltageV,neutralShiftV,dropRatio");
        for (StatePicture picture : answer.pictures())
            for (HouseFlow flow : flows(picture))
                for (PlaceFlow place : flow.places()) if (answer.isAsked(place.place())) node(flow, place, rows);
        return rows.text();
    }

    private static void node(HouseFlow flow, PlaceFlow place, Rows rows) {
        for (Map.Entry<Conductor, Double> conductor : place.earthVoltageV().entrySet()) {
            Optional<Phasor> phasor = flow.findVoltageToEarthV(place.place(), conductor.getKey());
            rows.add(
                    flow.state().name(),
                    flow.regime().name(),
                    place.place().text(),
                    conductor.getKey().name(),
                    number(conductor.getValue()),
                    number(phasor.map(NetworkAnswer::angleDeg).orElse(null)),
                    number(place.voltageV().get(conductor.getKey())),
                    number(place.neutralShiftV()),
                    number(place.dropRatio()));
        }
    }

    /** Each closed edge: cables, contacts, links, electrodes. */
    public String branches() {
        Rows rows = new Rows("state,regime,part,thing,conductor,currentA,angleDeg,lossW");
        for (StatePicture picture : answer.pictures())
            for (HouseFlow flow : flows(picture))
                for (Edge edge : flow.house().installation().edges()) {
                    int branch = flow.house().branch(edge);
                    if (branch < 0 || !isAsked(edge)) continue;
                    Phasor current = flow.flow().currentA(branch);
                    rows.add(
                            flow.state().name(),
                            flow.regime().name(),
                            edge.part().name(),
                            edge.thing().id().text(),
                            edge.conductor().name(),
                            number(current.magnitude()),
                            number(NetworkAnswer.angleDeg(current)),
                            number(flow.flow().lossW(branch)));
                }
        return rows.text();
    }

    /** What belongs to no place, such as a link, is left out only where single places are asked for. */
    private boolean isAsked(Edge edge) {
        return answer.places().size() > 1 || answer.isAsked(edge.thing().id());
    }

    /** Each fault. */
    public String faults() {
        Rows rows = new Rows("state,place,kind,lines,extreme,faultResistanceOhm,source,answer,currentA,"
                + "sourceL1A,sourceL2A,sourceL3A,loopOhm,voltageLeftV,touchVoltageV,protectiveA,linkA,earthA,"
                + "clearing,by,earliestS,latestS,dark,missing");
        for (StatePicture picture : answer.pictures()) for (FaultCourse course : picture.faults()) fault(course, rows);
        return rows.text();
    }

    private void fault(FaultCourse course, Rows rows) {
        Clearing clearing = course.clearing();
        rows.add(
                course.state().name(),
                course.place().text(),
                course.kind().name(),
                joined(course.lines()),
                course.extreme().name(),
                number(answer.faultOhm()),
                course.source().text(),
                course.answer().name(),
                number(course.currentA()),
                number(course.sourceA().l1()),
                number(course.sourceA().l2()),
                number(course.sourceA().l3()),
                number(course.loopOhm()),
                number(course.voltageLeftV()),
                number(course.touchVoltageV()),
                number(course.protectiveA()),
                number(course.linkA()),
                number(course.earthA()),
                NetworkJson.kind(clearing),
                NetworkJson.findBy(clearing).map(ThingId::text).orElse(""),
                number(clearing instanceof Clearing.ByDevice by ? (Double) by.earliestS() : null),
                number(clearing.latestS()),
                joined(course.dark()),
                joined(course.missing()));
    }

    private static List<HouseFlow> flows(StatePicture picture) {
        List<HouseFlow> flows = new ArrayList<>(2);
        if (picture.drawing() instanceof HouseFlow drawing) flows.add(drawing);
        if (picture.feeding() instanceof HouseFlow feeding) flows.add(feeding);
        return flows;
    }

    /** Several words in one cell, a space between them. */
    private static String joined(List<?> items) {
        return String.join(" ", items.stream().map(Object::toString).toList());
    }

    private static String number(@Nullable Double value) {
        Double written = NetworkAnswer.written(value);
        return written == null ? "" : written.toString();
    }

    /** Rows of cells that are words, ids or numbers: none of them needs quotes. */
    private static final class Rows {
        private final StringBuilder text = new StringBuilder();

        Rows(String head) {
            text.append(head).append('\n');
        }

        void add(String... cells) {
            text.append(String.join(",", cells)).append('\n');
        }

        String text() {
            return text.toString();
        }
    }
}
