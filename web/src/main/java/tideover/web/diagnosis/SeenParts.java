package tideover.web.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.PhraseArg;
import tideover.engine.wiring.diagnosis.Observation;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;
import tideover.papers.Wording;
import tideover.papers.diagnosis.DiagnosisLists;
import tideover.papers.diagnosis.DiagnosisLists.Length;
import tideover.papers.wiring.Cell;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.WiringModel;
import tideover.papers.wiring.WiringWording;
import tideover.web.diagnosis.DiagnosisSheet.Choice;
import tideover.web.diagnosis.DiagnosisSheet.Kind;
import tideover.web.diagnosis.DiagnosisSheet.Next;
import tideover.web.diagnosis.DiagnosisSheet.Option;
import tideover.web.diagnosis.DiagnosisSheet.Reading;
import tideover.web.diagnosis.DiagnosisSheet.Row;
import tideover.web.diagnosis.DiagnosisSheet.Seen;
import tideover.web.diagnosis.DiagnosisSheet.Value;
import tideover.web.work.Work;

/** What was seen, what fits it, what to read next, and what else can be read. */
final class SeenParts {
    /** Readings to choose from that are told at once. */
    private static final int MOST_READINGS = 40;

    private final Work work;
    private final Names names;
    private final Asked asked;
    private final WiringWording words;
    private final Wording wording;
    private final WiringModel model;
    private final DiagnosisLists lists;
    private final Map<String, PlannedReading> readings = new HashMap<>();
    private final List<Observation> observations = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();

    SeenParts(Work work, WiringModel model, Names names, Asked asked) {
        this.work = work;
        this.names = names;
        this.asked = asked;
        this.words = model.words();
        this.wording = words.words();
        this.model = model;
        this.lists = new DiagnosisLists(model);
        for (PlannedReading reading : model.run().procedure().readings()) readings.put(reading.id(), reading);
        for (Asked.Seen each : asked.seen()) observe(each);
    }

    private void observe(Asked.Seen each) {
        PlannedReading reading = readings.get(each.reading());
        Optional<Shown> shown = Asked.find(Shown.class, each.shown());
        if (reading == null) problems.add(wording.text("diagnosis.page.noReading", each.reading()));
        else if (shown.filter(reading.reading().kind().possible()::contains).isEmpty())
            problems.add(wording.text(
                    "diagnosis.noShown", each.shown(), each.reading(), String.join(", ", lists.values(reading))));
        else if (observations.stream().anyMatch(other -> other.reading().equals(reading)))
            problems.add(wording.text("diagnosis.twice", each.reading()));
        else observations.add(new Observation(reading, shown.get()));
    }

    /** What of the address could not be used. */
    List<String> problems() {
        return problems;
    }

    /** What follows from what was seen; nothing where nothing was. */
    @Nullable
    Seen found() {
        if (observations.isEmpty()) return null;
        List<Listing> told = lists.of(observations, asked.length());
        Listing fits = told.get(1);
        Map<String, Mistake> left = new HashMap<>();
        for (Mistake mistake : model.dictionary().explaining(observations)) left.put(mistake.id(), mistake);
        List<Kind> kinds =
                fits.groups().stream().map(group -> kind(group, left)).toList();
        int listed = kinds.stream().mapToInt(kind -> kind.mistakes().size()).sum();
        return new Seen(
                observations.stream().map(this::row).toList(),
                fits.notes(),
                kinds,
                listed < left.size() ? address(asked.with(Length.FULL)) : "",
                next(told.get(2)));
    }

    private String address(Asked then) {
        return DiagnosisSheets.address(work, then, "seen");
    }

    private Row row(Observation each) {
        PlannedReading planned = each.reading();
        return new Row(
                names.reading(planned),
                words.shown(planned.reading(), each.shown()),
                words.shown(planned.reading(), model.run().expected(planned)),
                address(asked.without(planned.id())));
    }

    private Kind kind(Listing.Group group, Map<String, Mistake> left) {
        List<Linked> told = new ArrayList<>();
        String more = "";
        for (List<Cell> row : group.rows()) {
            Mistake mistake = left.get(row.get(0).data());
            if (mistake != null) told.add(names.mistake(mistake));
            else more = wording.text("diagnosis.page.more", row.get(2).data());
        }
        return new Kind(group.title(), told, more);
    }

    private Next next(Listing listing) {
        List<String> notes = new ArrayList<>(listing.notes());
        if (listing.size() == 0) return new Next(notes, List.of(), null, List.of());
        List<List<Cell>> rows = listing.groups().get(0).rows();
        PlannedReading reading = require(rows.get(0));
        List<String> cautions = lists.cautions(reading);
        // The reading itself comes first; it is told with its link instead.
        notes.remove(0);
        notes.removeAll(cautions);
        List<Value> values = rows.stream()
                .map(row -> value(
                        reading, Shown.valueOf(row.get(2).data()), row.get(3).text()))
                .toList();
        return new Next(notes, cautions, names.reading(reading), values);
    }

    private PlannedReading require(List<Cell> row) {
        return Objects.requireNonNull(readings.get(row.get(0).data()));
    }

    private Value value(PlannedReading reading, Shown shown, String left) {
        return new Value(words.shown(reading.reading(), shown), left, address(asked.with(reading.id(), shown)));
    }

    /** Readings to choose from: none before somebody has said which. */
    Choice choice() {
        List<PlannedReading> found = isAsked() ? wanted() : List.of();
        List<Reading> shown =
                found.stream().limit(MOST_READINGS).map(this::reading).toList();
        return new Choice(asked.word(), situations(), asked.kept(), sentence(found.size(), shown.size()), shown);
    }

    private boolean isAsked() {
        return !asked.word().isEmpty() || asked.situation() != null;
    }

    private List<PlannedReading> wanted() {
        return lists.readings(asked.word()).groups().stream()
                .flatMap(group -> group.rows().stream())
                .map(this::require)
                .filter(reading -> asked.situation() == null || reading.situation() == asked.situation())
                // What is read with nothing lifted takes less: it comes first.
                .sorted(Comparator.comparing(reading -> reading.lifted() != null))
                .toList();
    }

    private List<Option> situations() {
        return readings.values().stream()
                .map(PlannedReading::situation)
                .distinct()
                .sorted()
                .map(each ->
                        new Option(Asked.path(each), wording.heading(each), each == asked.situation() ? "chosen" : ""))
                .toList();
    }

    private String sentence(int found, int shown) {
        if (!isAsked()) return wording.text("diagnosis.page.readings", PhraseArg.count(readings.size()));
        if (found == 0) return wording.text("diagnosis.readings.none");
        return found == shown
                ? wording.text("diagnosis.page.readings.all", PhraseArg.count(found))
                : wording.text("diagnosis.page.readings.some", PhraseArg.count(found), PhraseArg.count(shown));
    }

    private Reading reading(PlannedReading planned) {
        return new Reading(
                names.reading(planned),
                words.shown(planned.reading(), model.run().expected(planned)),
                planned.reading().kind().possible().stream()
                        .map(shown -> value(planned, shown, ""))
                        .toList());
    }
}
