package tideover.web.network;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.StatePicture;
import tideover.engine.assessment.Studies;
import tideover.engine.installation.Installation;
import tideover.engine.network.Share;
import tideover.engine.network.house.FlowStudy;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.HouseFlowResult;
import tideover.engine.network.house.PlaceFlow;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Topic;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.FactSource;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PerLine;
import tideover.papers.Wording;
import tideover.papers.diagram.Diagram;
import tideover.papers.diagram.FlowNotes;
import tideover.web.diagram.States;
import tideover.web.network.NetworkSheet.Fact;
import tideover.web.network.NetworkSheet.Load;
import tideover.web.network.NetworkSheet.Missing;
import tideover.web.network.NetworkSheet.Place;
import tideover.web.network.NetworkSheet.Start;
import tideover.web.note.Margins;
import tideover.web.note.Note;
import tideover.web.page.Stop;
import tideover.web.work.Frames;
import tideover.web.work.Stamps;
import tideover.web.work.Work;

/** Makes the sheet that shows what flows. */
@Component
final class NetworkSheets {
    static final String PAGE = "/network";

    private final Frames frames;
    private final Stamps stamps;

    NetworkSheets(Frames frames, Stamps stamps) {
        this.frames = frames;
        this.stamps = stamps;
    }

    NetworkSheet of(Work work, OperatingState state, Loads loads, HttpServletRequest request) {
        Installation installation = work.installation();
        Studies studies = work.atOnce().studies();
        Wording words = frames.words(request).with(installation);
        String page = work.address() + PAGE;
        String path = States.path(state);
        StatePicture picture = StatePicture.of(studies, state, installation.all(Fed.class), 0);
        FlowStudy study = picture.drawing() == null ? null : studies.flow();
        List<Share> shares = study == null ? List.of() : loads.shares(installation, study, state);
        HouseFlowResult flow =
                study == null || loads.isAllOn() ? picture.drawing() : study.flow(state, Loads.drawn(study, shares));
        Sentences sentences = new Sentences(installation, state, words);
        FaultRows faults = new FaultRows(installation, words, page, path);
        List<PlaceFlow> places = flow instanceof HouseFlow solved ? solved.places() : List.of();
        PlaceNumbers numbers = new PlaceNumbers(places, words);
        Diagram diagram = Diagram.of(installation, words, stamps.of(work));
        Diagram noted = flow instanceof HouseFlow solved ? diagram.with(FlowNotes.of(solved, words)) : diagram;
        return new NetworkSheet(
                frames.of(request, words, work, Stop.NETWORK),
                work.address(),
                path,
                States.links(
                        installation, state, words, other -> page + "?state=" + States.path(other) + loads.query()),
                flow == null ? List.of(nothing(picture, words)) : sentences.of(flow, shares, picture),
                flow == null || picture.drawing() == null || loads.isAllOn()
                        ? List.of()
                        : sentences.change(off(installation, state, loads), picture.drawing(), flow),
                study == null ? List.of() : loads(installation, state, study, loads, words),
                page + "?state=" + path,
                page + "?state=" + path + loads.query(),
                noted.in(state).pageSvg(work::address),
                noted.in(state).title(),
                numbers.heads(),
                places.stream()
                        .map(place -> new Place(
                                words.name(place.place()), faults.placeAddress(place.place()), numbers.of(place)))
                        .toList(),
                starts(work, words),
                faults.worst(picture.faults()),
                faults.table(picture.faults()),
                missing(work, picture.missing(), words));
    }

    private static String nothing(StatePicture picture, Wording words) {
        return words.text(picture.sources().isEmpty() ? "network.noSource" : "network.page.noFlow");
    }

    private static List<Circuit> off(Installation installation, OperatingState state, Loads loads) {
        return Loads.live(installation, state).stream()
                .filter(circuit -> !loads.isOn(circuit))
                .toList();
    }

    private static List<Load> loads(
            Installation installation, OperatingState state, FlowStudy study, Loads chosen, Wording words) {
        List<Load> loads = new ArrayList<>();
        for (Circuit circuit : Loads.live(installation, state))
            loads.add(new Load(
                    circuit.id().text(),
                    words.name(circuit.id()),
                    study.demand()
                            .findCurrentA(circuit)
                            .map(currentA -> draws(installation, circuit, currentA, words))
                            .orElse(words.text("network.load.unknown")),
                    chosen.isOn(circuit) ? "on" : ""));
        return loads;
    }

    private static String draws(Installation installation, Circuit circuit, PerLine currentA, Wording words) {
        List<String> lines = new ArrayList<>();
        for (Conductor line : installation.lines(circuit.id())) lines.add(words.word(line));
        return String.join(" ", lines) + " " + words.amount(currentA.largest(), Unit.A);
    }

    private List<Start> starts(Work work, Wording words) {
        Margins margins = new Margins(work, words);
        List<Start> starts = new ArrayList<>();
        for (Finding finding : work.atOnce().findings()) {
            boolean isStart = Topic.findByLimit(finding.key().check()).orElse(null) == Topic.START;
            if (!isStart || finding.outcome() == Outcome.NOT_APPLICABLE) continue;
            Note note = margins.note(finding);
            starts.add(new Start(note.look(), note.outcome(), note.name(), note.sentence(), note.lines()));
        }
        return starts;
    }

    static List<Missing> missing(Work work, List<FactId> facts, Wording words) {
        Margins margins = new Margins(work, words);
        Map<FactSource, List<Fact>> errands = new EnumMap<>(FactSource.class);
        for (FactId fact : facts)
            errands.computeIfAbsent(words.source(fact), source -> new ArrayList<>())
                    .add(new Fact(words.fact(fact), margins.address(fact)));
        List<Missing> missing = new ArrayList<>();
        errands.forEach((source, of) -> missing.add(new Missing(words.heading(source), of)));
        return missing;
    }
}
