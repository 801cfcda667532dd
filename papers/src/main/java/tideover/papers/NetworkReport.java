package tideover.papers;

import static tideover.engine.rules.PhraseArg.count;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.verbatim;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.engine.assessment.StatePicture;
import tideover.engine.assessment.Studies;
import tideover.engine.network.Share;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.HouseFlowResult;
import tideover.engine.network.house.PlaceFlow;
import tideover.engine.network.house.Unsolved;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.FactSource;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/** Currents, voltages and faults as plain text, for the screen of a command line. */
public final class NetworkReport {

    /** How much is told. */
    public enum Length {
        /** The worst places and faults. */
        SHORT,
        /** All places and faults, in tables. */
        FULL,
        /** What there is at the places asked for, each fault as a story. */
        PLACE
    }

    private static final String INDENT = "  ";
    private static final String POINT = INDENT + "· ";
    private static final int WORST_PLACES = 5;
    private static final int WORST_NEUTRALS = 2;

    private final Wording wording;
    private final NetworkWording flows;
    private final FaultWording faults;
    private final Studies studies;
    private final String books;
    private final Length length;
    private Paragraphs text = new Paragraphs();

    /** @param layers of the rule book, the lowest first */
    public NetworkReport(Wording wording, Studies studies, List<String> layers, Length length) {
        this.wording = wording.with(studies.installation());
        this.flows = new NetworkWording(wording, studies.installation());
        this.faults = new FaultWording(wording, studies.installation());
        this.studies = studies;
        this.books = String.join(" < ", layers);
        this.length = length;
    }

    /** The whole report, lines of at most 98 columns, ending with a line break. */
    public String text(List<StatePicture> pictures) {
        text = new Paragraphs();
        text.add("", wording.text("report.head", name(ThingId.PLACE), verbatim(books)));
        text.add("", wording.text("network.caution"));
        if (studies.flow() == null) text.add("", wording.text("network.noFlow", books));
        if (studies.faults() == null) text.add("", wording.text("network.noFaults", books));
        Set<FactId> missing = new LinkedHashSet<>();
        for (StatePicture picture : pictures) {
            boolean isOneOfTheModes =
                    picture.state() == OperatingState.CONNECTED || picture.state() == OperatingState.ISLAND_GRID_DEAD;
            state(picture, pictures.size() > 1 && length == Length.SHORT && !isOneOfTheModes);
            missing.addAll(picture.missing());
        }
        missing(missing);
        text.gap();
        text.add("", wording.text("caution.defer"));
        return text.toString();
    }

    private void state(StatePicture picture, boolean brief) {
        text.gap();
        text.add("", wording.heading(picture.state()));
        if (picture.sources().isEmpty()) {
            text.add(INDENT, wording.text("network.noSource"));
            return;
        }
        HouseFlowResult drawing = picture.drawing();
        if (drawing instanceof Unsolved unsolved) point(flows.of(unsolved));
        if (brief) {
            if (drawing instanceof HouseFlow flow) {
                flows.sources(flow).forEach(this::point);
                flows.astray(flow).forEach(this::point);
            }
            point(wording.text("network.brief", picture.state().name()));
            return;
        }
        if (drawing instanceof HouseFlow flow) drawn(flow, picture);
        if (length != Length.PLACE && picture.feeding() instanceof HouseFlow flow)
            flows.rise(flow).ifPresent(this::point);
        if (studies.faults() != null) faults(picture);
    }

    private void drawn(HouseFlow flow, StatePicture picture) {
        if (length != Length.PLACE) {
            flows.sources(flow).forEach(this::point);
            coincidence(picture.shares(), picture.state());
        }
        places(flow, picture);
        if (length == Length.PLACE) return;
        flows.highlights(flow).forEach(this::point);
        picture.lostNeutrals().stream()
                .limit(length == Length.FULL ? Long.MAX_VALUE : WORST_NEUTRALS)
                .forEach(lost -> point(flows.of(lost)));
        point(flows.solved(flow));
    }

    private void coincidence(List<Share> shares, OperatingState state) {
        Map<ThingId, Map<Conductor, List<Share>>> groups = new LinkedHashMap<>();
        for (Share share : shares)
            studies.installation()
                    .in(state)
                    .findSource(share.circuit())
                    .ifPresent(source -> groups.computeIfAbsent(source, s -> new EnumMap<>(Conductor.class))
                            .computeIfAbsent(share.line(), l -> new ArrayList<>())
                            .add(share));
        groups.forEach((source, lines) -> lines.forEach((line, of) -> point(flows.coincidence(source, line, of))));
    }

    private void places(HouseFlow flow, StatePicture picture) {
        Set<ThingId> asked = new LinkedHashSet<>();
        picture.faults().forEach(course -> asked.add(course.place()));
        List<PlaceFlow> shown = new ArrayList<>(flow.places());
        if (length == Length.PLACE) shown.removeIf(place -> !asked.contains(place.place()));
        if (length == Length.SHORT) {
            shown.sort(Comparator.comparingDouble(place -> -drop(place)));
            shown = shown.subList(0, Math.min(WORST_PLACES, shown.size()));
        }
        if (shown.isEmpty()) return;
        if (length != Length.PLACE) text.gap();
        text.add(INDENT, wording.text(length == Length.SHORT ? "network.voltages" : "network.voltages.all"));
        Columns table = new Columns(wording.locale());
        table.head(
                wording.text("network.place"),
                List.of("L1 V", "L2 V", "L3 V"),
                List.of(wording.text("network.column.shift"), wording.text("network.column.drop")),
                List.of("L1 A", "L2 A", "L3 A", "N A", "PE A"));
        for (PlaceFlow place : shown) table.row(wording.name(place.place()), place);
        table.lines().forEach(line -> text.addUnbroken(INDENT + line));
        if (length != Length.PLACE) text.gap();
    }

    private static double drop(PlaceFlow place) {
        Double dropRatio = place.dropRatio();
        return dropRatio == null ? Double.NEGATIVE_INFINITY : dropRatio;
    }

    private void faults(StatePicture picture) {
        text.gap();
        text.add(INDENT, wording.text("network.faults"));
        List<FaultRanking.Pair> pairs = FaultRanking.pairs(picture.faults());
        if (pairs.isEmpty()) text.add(INDENT, wording.text("network.noFault"));
        switch (length) {
            case SHORT -> {
                FaultRanking.worst(picture.faults())
                        .forEach((key, course) ->
                                point(wording.text("network.worst", wording.text(key), faults.story(course))));
                text.add(
                        INDENT,
                        wording.text("network.more", count(picture.faults().size())));
            }
            case FULL -> FaultTable.lines(pairs, wording, faults).forEach(line -> text.addUnbroken(INDENT + line));
            case PLACE -> {
                for (FaultRanking.Pair pair : pairs) {
                    point(faults.story(pair.smallest()));
                    point(faults.story(pair.largest()));
                }
            }
        }
    }

    private void point(String sentence) {
        text.add(POINT, wording.capitalised(sentence));
    }

    private void missing(Set<FactId> missing) {
        Map<FactSource, List<FactId>> errands = new EnumMap<>(FactSource.class);
        for (FactId fact : missing)
            errands.computeIfAbsent(wording.source(fact), s -> new ArrayList<>())
                    .add(fact);
        if (!errands.isEmpty()) text.gap();
        errands.forEach((source, facts) -> {
            text.add("", wording.text("network.missing", word(source)));
            for (FactId fact : facts) text.add(INDENT, "· " + wording.fact(fact));
        });
    }
}
