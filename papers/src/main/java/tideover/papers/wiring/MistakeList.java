package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.wiring.mistake.Coverage;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.procedure.Step;
import tideover.papers.Wording;

/** Mistakes with the steps that reveal them, as rows. */
final class MistakeList {

    private static final int FEW = 2;

    private final Coverage coverage;
    private final Wording wording;
    private final WiringWording words;
    private final MistakeWording mistakes;

    MistakeList(WiringData wiring) {
        this.coverage = wiring.model().coverage();
        this.wording = wiring.wording();
        this.words = wiring.model().words();
        this.mistakes = new MistakeWording(words, wiring.model().house());
    }

    static List<Column> columns(Wording wording) {
        return List.of(
                Column.data("mistake"),
                Column.words("text", wording.text("model.mistake"), 110),
                Column.words("hazards", wording.text("model.danger"), 60),
                Column.data("steps"),
                Column.toRead(wording.text("model.reveals"), 90));
    }

    /** A mistake that no demanded step reveals: with its danger, and the first steps that may be added. */
    List<Cell> hidden(Mistake mistake) {
        List<Step> steps = coverage.revealing(mistake);
        return List.of(
                Cell.of(mistake.id()),
                Cell.of(mistakes.heading(mistake)),
                CoveragePart.danger(coverage.hazards(mistake), wording),
                Cell.of(ids(steps)),
                Cell.of(told(steps)));
    }

    static String ids(List<Step> steps) {
        return String.join(" ", steps.stream().map(Step::id).toList());
    }

    private String told(List<Step> steps) {
        List<String> told =
                new ArrayList<>(steps.stream().limit(FEW).map(words::step).toList());
        if (steps.size() > FEW) told.add(wording.text("model.more", String.valueOf(steps.size() - FEW)));
        return String.join("; ", told);
    }
}
