package tideover.papers.diagnosis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import tideover.engine.rules.PhraseArg;
import tideover.engine.wiring.diagnosis.Doubt;
import tideover.engine.wiring.diagnosis.Observation;
import tideover.engine.wiring.diagnosis.Suggestion;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.mistake.MistakeKind;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;
import tideover.papers.Wording;
import tideover.papers.wiring.Cell;
import tideover.papers.wiring.Column;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.MistakeWording;
import tideover.papers.wiring.WiringModel;
import tideover.papers.wiring.WiringWording;

/** What was seen, what fits it, and what to read next, each as one list. */
public final class DiagnosisLists {

    /** Mistakes of one kind that are told each by itself where there are many. */
    private static final int TOLD = 5;
    /** So many mistakes are always told each by itself. */
    private static final int FEW = 24;

    /** How much is told. */
    public enum Length {
        SHORT,
        FULL
    }

    private final WiringModel model;
    private final Wording wording;
    private final WiringWording words;
    private final MistakeWording mistakes;

    public DiagnosisLists(WiringModel model) {
        this.model = model;
        this.words = model.words();
        this.wording = words.words();
        this.mistakes = new MistakeWording(words, model.house());
    }

    /** All three lists. */
    public List<Listing> of(List<Observation> seen, Length length) {
        List<Mistake> left = model.dictionary().explaining(seen);
        return List.of(seen(seen), fits(seen, left, length), next(seen, left));
    }

    private Listing seen(List<Observation> seen) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Observation each : seen) {
            PlannedReading planned = each.reading();
            Shown should = model.run().expected(planned);
            rows.add(List.of(
                    Cell.of(planned.id()),
                    Cell.of(words.whole(planned)),
                    Cell.of(
                            words.shown(planned.reading(), each.shown()),
                            each.shown().name()),
                    Cell.of(words.shown(planned.reading(), should), should.name())));
        }
        return new Listing(
                "seen",
                wording.text("diagnosis.seen"),
                List.of(),
                List.of(
                        Column.data("reading"),
                        Column.words("text", wording.text("diagnosis.reading"), 120),
                        Column.words("shown", wording.text("diagnosis.shown"), 40),
                        Column.words("should", wording.text("diagnosis.should"), 40)),
                List.of(new Listing.Group("", rows)));
    }

    private Listing fits(List<Observation> seen, List<Mistake> left, Length length) {
        Map<MistakeKind, List<Mistake>> kinds = new EnumMap<>(MistakeKind.class);
        for (Mistake mistake : left)
            kinds.computeIfAbsent(mistake.kind(), kind -> new ArrayList<>()).add(mistake);
        boolean isShort = length == Length.SHORT && left.size() > FEW;
        List<Listing.Group> groups = new ArrayList<>();
        // What changes nothing that was seen is counted only, unless somebody wants it all.
        if (length == Length.FULL || !model.dictionary().isHealthy(seen))
            kinds.forEach((kind, all) -> groups.add(new Listing.Group(wording.heading(kind), rows(all, isShort))));
        return new Listing(
                "mistakes",
                wording.text("diagnosis.fits"),
                summary(seen, left),
                List.of(
                        Column.data("mistake"),
                        Column.data("kind"),
                        Column.words("text", wording.text("model.mistake"), 200)),
                groups);
    }

    private List<List<Cell>> rows(List<Mistake> all, boolean isShort) {
        List<List<Cell>> rows = new ArrayList<>();
        int told = isShort && all.size() > TOLD + 1 ? TOLD : all.size();
        for (Mistake mistake : all.subList(0, told))
            rows.add(
                    List.of(Cell.of(mistake.id()), Cell.of(mistake.kind().name()), Cell.of(mistakes.heading(mistake))));
        if (told < all.size())
            rows.add(List.of(
                    Cell.EMPTY,
                    Cell.EMPTY,
                    Cell.of(wording.text("diagnosis.more", String.valueOf(all.size() - told)), all.size() - told)));
        return rows;
    }

    private List<String> summary(List<Observation> seen, List<Mistake> left) {
        boolean isHealthy = model.dictionary().isHealthy(seen);
        if (isHealthy)
            return List.of(
                    left.isEmpty()
                            ? wording.text("diagnosis.healthy.alone")
                            : wording.text("diagnosis.healthy", String.valueOf(left.size())));
        if (!left.isEmpty()) return List.of(wording.text("diagnosis.fits.how", PhraseArg.count(left.size())));
        String doubt = Doubt.find(model.dictionary(), seen)
                .map(this::doubt)
                .orElseGet(() -> wording.text("diagnosis.several"));
        return List.of(wording.text("diagnosis.nothing"), doubt);
    }

    private String doubt(Doubt doubt) {
        Observation seen = doubt.observation();
        String reading =
                words.whole(seen.reading()) + ": " + words.shown(seen.reading().reading(), seen.shown());
        return doubt.isHealthy()
                ? wording.text("diagnosis.doubt.healthy", reading)
                : wording.text("diagnosis.doubt", PhraseArg.verbatim(reading), PhraseArg.count(doubt.left()));
    }

    private Listing next(List<Observation> seen, List<Mistake> left) {
        Set<PlannedReading> without = new HashSet<>();
        for (Observation each : seen) without.add(each.reading());
        Suggestion next = model.dictionary().findNext(left, without).orElse(null);
        List<String> notes = new ArrayList<>();
        List<List<Cell>> rows = new ArrayList<>();
        if (next == null) {
            if (left.size() == 1) notes.add(wording.text("diagnosis.next.one"));
            if (left.size() > 1) notes.add(wording.text("diagnosis.next.none"));
        } else {
            notes.add(wording.capitalised(words.whole(next.reading())));
            notes.add(wording.text("diagnosis.next.how"));
            notes.addAll(cautions(next.reading()));
            for (Shown value : Shown.values()) {
                Integer count = next.left().get(value);
                if (count != null) rows.add(next(next.reading(), value, count));
            }
        }
        return new Listing(
                "next",
                wording.text("diagnosis.next"),
                notes,
                List.of(
                        Column.data("reading"),
                        Column.data("text"),
                        Column.words("shown", wording.text("diagnosis.value"), 100),
                        Column.numbers("left", wording.text("diagnosis.left"), 30)),
                rows.isEmpty() ? List.of() : List.of(new Listing.Group("", rows)));
    }

    /** What to heed before a reading is taken, where the hand goes; nothing where a look at a display will do. */
    public List<String> cautions(PlannedReading planned) {
        List<String> cautions = new ArrayList<>();
        boolean isLook = switch (planned.reading().kind()) {
            case MODE, POSITION, INPUT, OUTPUT, BUS, METER, SETTING -> true;
            case CONTACT,
                    COIL,
                    LINK_SEEN,
                    VOLTAGE,
                    ROTATION,
                    CONTROL_VOLTAGE,
                    LOAD,
                    RCD_TEST,
                    EARTH_CURRENT,
                    CONTINUITY,
                    CORE_CONTINUITY,
                    BUS_RESISTANCE -> false;
        };
        if (planned.situation().isDead() || planned.lifted() != null)
            cautions.add(wording.text("diagnosis.caution.dead"));
        if (!planned.situation().isDead() && (!isLook || planned.lifted() != null))
            cautions.add(wording.text("diagnosis.caution.live"));
        return cautions;
    }

    private List<Cell> next(PlannedReading planned, Shown value, int count) {
        return List.of(
                Cell.of(planned.id()),
                Cell.of(words.whole(planned)),
                Cell.of(words.shown(planned.reading(), value), value.name()),
                Cell.of(count));
    }

    /** Everything that can be read, or that in which each of these words occurs. */
    public Listing readings(String search) {
        List<String> wanted = List.of(search.strip().toLowerCase(Locale.ROOT).split("\\s+"));
        List<Listing.Group> groups = new ArrayList<>();
        for (PlannedReading planned : model.run().procedure().readings()) {
            String whole = words.whole(planned);
            String text = (planned.id() + " " + whole).toLowerCase(Locale.ROOT);
            if (!wanted.stream().allMatch(text::contains)) continue;
            Shown should = model.run().expected(planned);
            List<Cell> cells = List.of(
                    Cell.of(planned.id()),
                    Cell.of(whole),
                    Cell.of(words.shown(planned.reading(), should), should.name()),
                    Cell.of(String.join(", ", values(planned))));
            groups.add(new Listing.Group(planned.id(), List.of(cells)));
        }
        return new Listing(
                "readings",
                wording.text("diagnosis.readings"),
                List.of(wording.text(groups.isEmpty() ? "diagnosis.readings.none" : "diagnosis.readings.how")),
                List.of(
                        Column.data("reading"),
                        Column.words("text", wording.text("diagnosis.reading"), 90),
                        Column.words("should", wording.text("diagnosis.should"), 30),
                        Column.words("values", wording.text("diagnosis.values"), 60)),
                groups);
    }

    /** What a reading can show, as one types it, with its figure or word where that differs. */
    public List<String> values(PlannedReading planned) {
        return planned.reading().kind().possible().stream()
                .map(value -> value(planned, value))
                .toList();
    }

    private String value(PlannedReading planned, Shown value) {
        String id = value.name().toLowerCase(Locale.ROOT).replace('_', '-');
        String told = words.shown(planned.reading(), value);
        return told.replace(' ', '-').equalsIgnoreCase(id) ? id : id + " (" + told + ")";
    }
}
