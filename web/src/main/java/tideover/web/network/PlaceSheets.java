package tideover.web.network;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.Optional;
import org.springframework.stereotype.Component;
import tideover.engine.assessment.StatePicture;
import tideover.engine.installation.Installation;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.PlaceFlow;
import tideover.engine.site.Circuit;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;
import tideover.papers.Wording;
import tideover.papers.curves.CurveSheet;
import tideover.web.diagram.States;
import tideover.web.page.NotHere;
import tideover.web.page.Stop;
import tideover.web.page.TypedNumber;
import tideover.web.work.Frames;
import tideover.web.work.Stamps;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Makes the sheet of one place. */
@Component
final class PlaceSheets {
    private final Works works;
    private final Frames frames;
    private final Stamps stamps;

    PlaceSheets(Works works, Frames frames, Stamps stamps) {
        this.works = works;
        this.frames = frames;
        this.stamps = stamps;
    }

    PlaceSheet of(Work work, String place, OperatingState state, TypedNumber fault, HttpServletRequest request) {
        Installation installation = work.installation();
        Fed fed = find(installation, place);
        Wording words = frames.words(request).with(installation);
        String page = work.address() + NetworkSheets.PAGE;
        String path = States.path(state);
        StatePicture picture = StatePicture.of(work.atOnce().studies(), state, List.of(fed), fault.or(0));
        List<PlaceFlow> flows = flows(picture, fed.id());
        PlaceNumbers numbers = new PlaceNumbers(flows, words);
        FaultRows faults = new FaultRows(installation, words, page, path);
        Optional<CurveSheet> curves = curves(work, fed, words);
        return new PlaceSheet(
                frames.of(request, words, work, Stop.NETWORK),
                work.address(),
                page + "?state=" + path,
                fed.id().text(),
                words.name(fed.id()),
                work.address() + "/things/" + fed.id(),
                work.address() + "/findings?place=" + fed.id(),
                States.links(
                        installation, state, words, other -> page + "/" + fed.id() + "?state=" + States.path(other)),
                numbers.heads(),
                flows.isEmpty() ? List.of() : numbers.of(flows.get(0)),
                faults.stories(picture.faults()),
                faults.table(picture.faults()),
                path,
                fault.text().isEmpty() ? "0" : fault.text(),
                fault.isKnown() ? "" : words.text("network.faultResistance.not", fault.text()),
                curves.map(CurveSheet::pageSvg).orElse(""),
                curves.map(CurveSheet::title).orElse(""),
                curves.isPresent() ? page + "/" + fed.id() + "/curves.svg" : "",
                NetworkSheets.missing(work, picture.missing(), words));
    }

    /** The time–current sheet of a circuit, if it has one. */
    Optional<CurveSheet> curves(Work work, String place, HttpServletRequest request) {
        Installation installation = work.installation();
        return curves(work, find(installation, place), frames.words(request).with(installation));
    }

    private Optional<CurveSheet> curves(Work work, Fed fed, Wording words) {
        if (!(fed instanceof Circuit circuit)) return Optional.empty();
        return works.assessor()
                .curves(work.atOnce())
                .find(circuit)
                .map(path -> CurveSheet.of(path, work.atOnce(), words, stamps.of(work)));
    }

    private static Fed find(Installation installation, String place) {
        return Optional.of(place)
                .filter(ThingId::isWellFormed)
                .flatMap(id -> installation.findFed(new ThingId(id)))
                .orElseThrow(() -> new NotHere("place " + place));
    }

    private static List<PlaceFlow> flows(StatePicture picture, ThingId place) {
        if (!(picture.drawing() instanceof HouseFlow flow)) return List.of();
        return flow.places().stream().filter(each -> each.place().equals(place)).toList();
    }
}
