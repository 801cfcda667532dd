package tideover.papers.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.Assessment;
import tideover.engine.assessment.StatePicture;
import tideover.engine.assessment.Studies;
import tideover.engine.installation.Installation;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.PlaceFlow;
import tideover.engine.network.house.Unsolved;
import tideover.engine.protection.Clearing;
import tideover.engine.protection.FaultCourse;
import tideover.engine.protection.FaultKind;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.papers.FaultRanking;
import tideover.papers.FaultWording;
import tideover.papers.NetworkWording;
import tideover.papers.Wording;

/** What flows in both modes, and what ends a fault at each circuit. */
final class ModePages {

    /** What there is to say of one mode. */
    record Mode(String name, List<String> sentences) {}

    /** @param numbers current and drop in each mode; {@code faults} to PE and to N in each mode */
    record CircuitFlow(String circuit, List<String> numbers, List<Fault> faults) {}

    /** One fault: current, time and, to PE, voltage of exposed parts until then; what ends it. */
    record Fault(String story, String by) {}

    private static final String NONE = "–";

    /** Less is nothing anyone would notice [V]. */
    private static final double NOTICEABLE_V = 1;

    private final Studies studies;
    private final Installation installation;
    private final Wording wording;
    private final NetworkWording flows;
    private final FaultWording faults;
    private final List<StatePicture> pictures;
    private final String books;

    /** @param modes the states shown */
    ModePages(Assessment assessment, Wording wording, List<OperatingState> modes) {
        this.studies = assessment.studies();
        this.installation = assessment.installation();
        this.wording = wording;
        this.flows = new NetworkWording(wording, installation);
        this.faults = new FaultWording(wording, installation);
        this.books = String.join(" < ", assessment.rules().layers());
        this.pictures = modes.stream()
                .map(state -> StatePicture.of(studies, state, installation.circuits(), 0))
                .toList();
    }

    List<Mode> modes() {
        List<Mode> modes = new ArrayList<>();
        for (StatePicture picture : pictures) modes.add(new Mode(wording.heading(picture.state()), sentences(picture)));
        return modes;
    }

    private List<String> sentences(StatePicture picture) {
        List<String> said = new ArrayList<>();
        if (picture.drawing() == null) said.add(wording.text("network.noFlow", books));
        if (picture.drawing() instanceof Unsolved unsolved) said.add(flows.of(unsolved));
        if (picture.drawing() instanceof HouseFlow flow) {
            said.addAll(flows.sources(flow));
            flows.drop(flow).ifPresent(said::add);
            said.addAll(flows.highlights(flow));
        }
        if (picture.feeding() instanceof HouseFlow flow) flows.rise(flow).ifPresent(said::add);
        picture.lostNeutrals().stream().limit(1).map(flows::of).forEach(said::add);
        if (studies.faults() == null) said.add(wording.text("network.noFaults", books));
        return said.stream().map(wording::capitalised).toList();
    }

    /** Heads of the columns of numbers, mode by mode. */
    List<String> flowHeads() {
        return heads("draws", "drop");
    }

    /** Heads of the columns of faults, mode by mode. */
    List<String> faultHeads() {
        return heads("earth", "neutral");
    }

    private List<String> heads(String... keys) {
        List<String> heads = new ArrayList<>();
        for (StatePicture picture : pictures)
            for (String key : keys) heads.add(wording.text("handover.network." + key, PhraseArg.word(picture.state())));
        return heads;
    }

    /** One row for each circuit; none where the rule book says too little to compute anything. */
    List<CircuitFlow> circuits() {
        List<CircuitFlow> rows = new ArrayList<>();
        if (studies.flow() == null && studies.faults() == null) return rows;
        for (Circuit circuit : installation.circuits()) {
            List<String> numbers = new ArrayList<>();
            List<Fault> ends = new ArrayList<>();
            for (StatePicture picture : pictures) {
                addNumbers(circuit, picture, numbers);
                ends.add(fault(circuit, FaultKind.LINE_TO_EARTH, picture));
                ends.add(fault(circuit, FaultKind.LINE_TO_NEUTRAL, picture));
            }
            rows.add(new CircuitFlow(wording.name(circuit.id()), numbers, ends));
        }
        return rows;
    }

    private void addNumbers(Circuit circuit, StatePicture picture, List<String> numbers) {
        Optional<PlaceFlow> place = picture.drawing() instanceof HouseFlow flow
                ? flow.places().stream()
                        .filter(each -> each.place().equals(circuit.id()))
                        .findFirst()
                : Optional.empty();
        PerLine currentA = place.isPresent() && picture.drawing() instanceof HouseFlow flow
                ? flow.lineCurrentsA(circuit)
                : PerLine.ZERO;
        numbers.add(place.isEmpty() ? NONE : wording.amount(currentA.largest(), Unit.A));
        numbers.add(place.map(PlaceFlow::dropRatio).map(this::percent).orElse(NONE));
    }

    private String percent(@Nullable Double ratio) {
        // A tenth of a percent is all that lengths and loads are good for.
        return ratio == null ? NONE : wording.amount(Math.rint(ratio * 1000) / 1000, Unit.PERCENT);
    }

    private Fault fault(Circuit circuit, FaultKind kind, StatePicture picture) {
        List<FaultCourse> here = picture.faults().stream()
                .filter(course -> course.place().equals(circuit.id()))
                .toList();
        FaultCourse course = FaultRanking.slowest(here, kind).orElse(null);
        if (course == null) return new Fault(NONE, "");
        String story = wording.text(
                "handover.network.story",
                PhraseArg.amount(course.currentA(), Unit.A),
                PhraseArg.verbatim(faults.latest(course.clearing())));
        if (kind == FaultKind.LINE_TO_EARTH && course.touchVoltageV() >= NOTICEABLE_V)
            story = wording.text(
                    "handover.network.touch",
                    PhraseArg.verbatim(story),
                    PhraseArg.amount(course.touchVoltageV(), Unit.V));
        boolean own = course.clearing() instanceof Clearing.ByDevice by
                && by.kind() == Clearing.DeviceKind.OVERCURRENT
                && by.device().equals(circuit.id());
        return new Fault(story, own ? wording.text("handover.network.own") : faults.endedBy(course.clearing()));
    }
}
