package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.engine.rules.PhraseArg;
import tideover.engine.wiring.mistake.Coverage;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.mistake.MistakeKind;
import tideover.engine.wiring.mistake.Unseen;
import tideover.engine.wiring.model.Hazard;
import tideover.engine.wiring.procedure.Step;
import tideover.papers.Wording;

/** How many mistakes the steps reveal, which of them no demanded step does, and what to add. */
final class CoveragePart implements WiringPart {

    /** Mistakes of one kind. */
    private static final class Count {
        private int all;
        private int demanded;
        private int further;
        private int unseen;

        private void add(Count other) {
            all += other.all;
            demanded += other.demanded;
            further += other.further;
            unseen += other.unseen;
        }
    }

    @Override
    public String name() {
        return "coverage";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        return List.of(counts(wiring), hidden(wiring), addition(wiring));
    }

    private Listing counts(WiringData wiring) {
        Wording wording = wiring.wording();
        Coverage coverage = wiring.model().coverage();
        Map<MistakeKind, Count> counts = new EnumMap<>(MistakeKind.class);
        for (Mistake mistake : coverage.mistakes()) {
            Count count = counts.computeIfAbsent(mistake.kind(), kind -> new Count());
            count.all++;
            if (coverage.isRevealed(mistake)) count.demanded++;
            else if (coverage.isVisible(mistake)) count.further++;
            else count.unseen++;
        }
        List<List<Cell>> rows = new ArrayList<>();
        Count sum = new Count();
        counts.forEach((kind, count) -> {
            sum.add(count);
            rows.add(cells(Cell.of(wording.word(kind), kind.name()), count));
        });
        rows.add(cells(Cell.of(wording.text("model.sum"), "ALL"), sum));
        String how = wording.text(
                "model.coverage.how",
                PhraseArg.count(sum.all),
                PhraseArg.count(sum.demanded),
                PhraseArg.count(sum.further),
                PhraseArg.count(sum.unseen));
        return new Listing(
                name(),
                wording.text("model.coverage"),
                List.of(wiring.model().house().findLeader().isEmpty() ? wording.text("model.none") : how),
                List.of(
                        Column.words("kind", wording.text("model.kind"), 110),
                        Column.numbers("all", wording.text("model.all"), 20),
                        Column.numbers("byDemandedSteps", wording.text("model.demanded"), 30),
                        Column.numbers("byFurtherSteps", wording.text("model.further"), 30),
                        Column.numbers("byNone", wording.text("model.unseen"), 20)),
                sum.all == 0 ? List.of() : List.of(new Listing.Group("", rows)));
    }

    private static List<Cell> cells(Cell kind, Count count) {
        return List.of(
                kind, Cell.of(count.all), Cell.of(count.demanded), Cell.of(count.further), Cell.of(count.unseen));
    }

    private static Listing hidden(WiringData wiring) {
        Wording wording = wiring.wording();
        Coverage coverage = wiring.model().coverage();
        MistakeList list = new MistakeList(wiring);
        List<List<Cell>> further = new ArrayList<>();
        Map<Unseen, List<List<Cell>>> unseen = new EnumMap<>(Unseen.class);
        for (Mistake mistake : coverage.hidden()) {
            List<Cell> cells = list.hidden(mistake);
            if (coverage.isVisible(mistake)) further.add(cells);
            else
                unseen.computeIfAbsent(coverage.reason(mistake), reason -> new ArrayList<>())
                        .add(cells);
        }
        List<Listing.Group> groups = new ArrayList<>();
        if (!further.isEmpty()) groups.add(new Listing.Group(wording.text("model.byFurther"), further));
        unseen.forEach((reason, rows) ->
                groups.add(new Listing.Group(wording.text("model.byNothing.because", wording.word(reason)), rows)));
        return new Listing(
                "hidden",
                wording.text("model.hidden"),
                List.of(wording.text(groups.isEmpty() ? "model.hidden.none" : "model.hidden.how")),
                MistakeList.columns(wording),
                groups);
    }

    private static Listing addition(WiringData wiring) {
        Wording wording = wiring.wording();
        WiringWording words = wiring.model().words();
        List<List<Cell>> rows = new ArrayList<>();
        for (Step step : wiring.model().coverage().smallestAddition())
            rows.add(List.of(Cell.of(step.id()), Cell.of(step.index() + 1), Cell.of(words.step(step))));
        return new Listing(
                "addition",
                wording.text("model.addition"),
                List.of(wording.text(rows.isEmpty() ? "model.addition.none" : "model.addition.how")),
                List.of(
                        Column.data("step"),
                        Column.numbers("number", wording.text("model.number"), 20),
                        Column.toRead(wording.text("model.step"), 200)),
                rows.isEmpty() ? List.of() : List.of(new Listing.Group("", rows)));
    }

    /** What a mistake leads to in service that the healthy house does not. */
    static Cell danger(Set<Hazard> hazards, Wording wording) {
        List<String> words = hazards.stream().map(wording::word).toList();
        return words.isEmpty()
                ? Cell.EMPTY
                : Cell.of(
                        String.join("; ", words),
                        String.join(" ", hazards.stream().map(Enum::name).toList()));
    }
}
