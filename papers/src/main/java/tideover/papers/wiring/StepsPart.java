package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;
import tideover.engine.wiring.procedure.Run;
import tideover.engine.wiring.procedure.Step;
import tideover.engine.wiring.procedure.StepName;
import tideover.papers.Wording;

/** The steps of commissioning with what they read and what that should show. */
final class StepsPart implements WiringPart {

    /**
     * What readings may share a row by: taken in one situation, and to show the same.
     *
     * @param at first their place, then what is read there
     */
    private record Alike(String situation, String at, String should, Shown shown) {}

    @Override
    public String name() {
        return "steps";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        Wording wording = wiring.wording();
        WiringModel model = wiring.model();
        Map<StepName, List<List<Cell>>> rows = new LinkedHashMap<>();
        for (Step step : model.run().procedure().steps())
            rows.computeIfAbsent(step.name(), name -> new ArrayList<>()).addAll(rows(step, model));
        List<Listing.Group> groups = new ArrayList<>();
        rows.forEach((name, cells) -> groups.add(new Listing.Group(title(name, wording), cells)));
        List<String> notes = groups.isEmpty()
                ? List.of(wording.text("model.none"))
                : List.of(
                        wording.text("model.steps.how"),
                        wording.text("model.steps.loss"),
                        wording.text("model.steps.further"));
        return List.of(new Listing(name(), wording.text("model.steps"), notes, columns(wording), groups));
    }

    private static String title(StepName name, Wording wording) {
        String what = wording.text("model.step.group", wording.heading(name.kind()), wording.word(name));
        return name.isDemanded() ? what : wording.text("model.step.addition", what);
    }

    private static List<Column> columns(Wording wording) {
        return List.of(
                Column.numbers("number", wording.text("model.number"), 12),
                Column.data("step"),
                Column.data("situation"),
                Column.words("house", wording.text("model.situation"), 50),
                Column.words("place", wording.text("model.where"), 50),
                Column.data("readings"),
                Column.words("what", wording.text("model.what"), 110),
                Column.data("shown"),
                Column.words("should", wording.text("model.should"), 40));
    }

    private static List<List<Cell>> rows(Step step, WiringModel model) {
        WiringWording words = model.words();
        Run run = model.run();
        Map<Alike, List<PlannedReading>> alike = new LinkedHashMap<>();
        for (int index : step.readings()) {
            PlannedReading planned = run.procedure().readings().get(index);
            alike.computeIfAbsent(alike(planned, run, words), key -> new ArrayList<>())
                    .add(planned);
        }
        Map<Alike, List<PlannedReading>> told = new LinkedHashMap<>();
        Map<Alike, List<String>> places = new LinkedHashMap<>();
        alike.forEach((key, readings) -> {
            String what =
                    words.what(readings.stream().map(PlannedReading::reading).toList());
            Alike row = new Alike(key.situation(), what, key.should(), key.shown());
            told.computeIfAbsent(row, r -> new ArrayList<>()).addAll(readings);
            places.computeIfAbsent(row, r -> new ArrayList<>()).add(key.at());
        });
        List<List<Cell>> rows = new ArrayList<>();
        told.forEach((row, readings) -> rows.add(cells(step, row, String.join("; ", places.get(row)), readings)));
        return rows;
    }

    private static Alike alike(PlannedReading planned, Run run, WiringWording words) {
        Shown shown = run.expected(planned);
        return new Alike(
                words.situation(planned), words.place(planned.reading()), words.shown(planned.reading(), shown), shown);
    }

    private static List<Cell> cells(Step step, Alike row, String places, List<PlannedReading> readings) {
        return List.of(
                Cell.of(step.index() + 1),
                Cell.of(step.id()),
                Cell.of(readings.get(0).situation().name()),
                Cell.of(row.situation()),
                Cell.of(places),
                Cell.of(String.join(
                        " ", readings.stream().map(PlannedReading::id).toList())),
                Cell.of(row.at()),
                Cell.of(row.shown().name()),
                Cell.of(row.should()));
    }
}
