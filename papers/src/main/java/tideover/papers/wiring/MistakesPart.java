package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import tideover.engine.wiring.mistake.Coverage;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.mistake.MistakeKind;
import tideover.engine.wiring.procedure.Step;
import tideover.papers.Wording;

/** Every mistake with the numbers of all steps that reveal it. */
final class MistakesPart implements WiringPart {

    @Override
    public String name() {
        return "mistakes";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        Wording wording = wiring.wording();
        Coverage coverage = wiring.model().coverage();
        MistakeWording words =
                new MistakeWording(wiring.model().words(), wiring.model().house());
        Map<MistakeKind, List<List<Cell>>> rows = new EnumMap<>(MistakeKind.class);
        for (Mistake mistake : coverage.mistakes()) {
            List<Step> steps = coverage.revealing(mistake);
            List<String> numbers =
                    steps.stream().map(step -> String.valueOf(step.index() + 1)).toList();
            rows.computeIfAbsent(mistake.kind(), kind -> new ArrayList<>())
                    .add(List.of(
                            Cell.of(mistake.id()),
                            Cell.of(words.heading(mistake)),
                            Cell.of(MistakeList.ids(steps)),
                            Cell.of(String.join(" ", numbers))));
        }
        List<Listing.Group> groups = new ArrayList<>();
        rows.forEach((kind, cells) -> groups.add(new Listing.Group(wording.heading(kind), cells)));
        return List.of(new Listing(
                name(),
                wording.text("model.mistakes"),
                List.of(wording.text(groups.isEmpty() ? "model.none" : "model.mistakes.how")),
                List.of(
                        Column.data("mistake"),
                        Column.words("text", wording.text("model.mistake"), 130),
                        Column.data("steps"),
                        Column.toRead(wording.text("model.numbers"), 130)),
                groups));
    }
}
