package tideover.papers.handover;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import tideover.engine.installation.Installation;
import tideover.engine.site.Evidence;
import tideover.engine.site.FactId;
import tideover.engine.site.Origin;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.papers.FactText;
import tideover.papers.Wording;

/** All facts with their origin: thing by thing, and in it by who says so. */
final class FactList {

    /** @param about kind of thing and what becomes of it */
    record ThingRow(String name, String about, List<FactRow> rows) {}

    /**
     * Facts of one thing with the same evidence.
     *
     * @param first   not empty for the first of its thing
     * @param number  of the evidence; empty where there is none
     * @param assumed not empty where nobody has said so yet
     */
    record FactRow(String first, String facts, String origin, String number, String assumed) {}

    /** Who says so, once for all facts that rest on it. */
    record EvidenceRow(String number, String origin, String by, String on, String document) {}

    private final Installation installation;
    private final Wording wording;
    private final FactText texts;
    private final Map<EvidenceKey, EvidenceRow> evidence = new LinkedHashMap<>();

    private record EvidenceKey(Origin origin, String by, String on, String document) {}

    FactList(Installation installation, Wording wording) {
        this.installation = installation;
        this.wording = wording;
        this.texts = new FactText(wording);
    }

    /** Every thing with the facts known of it; fills the evidence too. */
    List<ThingRow> things() {
        List<ThingRow> rows = new ArrayList<>();
        Stream<Thing> single = Stream.of(ThingId.PLACE, ThingId.GRID_OPERATOR, ThingId.SUPPLY)
                .flatMap(id -> installation.find(id).stream());
        Stream.concat(single, installation.things().stream())
                .filter(thing -> !FactText.known(thing).isEmpty())
                .forEach(thing -> rows.add(row(thing)));
        return rows;
    }

    /** What the numbers behind the origins stand for, in order; complete once the things are listed. */
    List<EvidenceRow> evidence() {
        return List.copyOf(evidence.values());
    }

    private ThingRow row(Thing thing) {
        Map<EvidenceKey, List<String>> groups = new LinkedHashMap<>();
        for (FactId fact : FactText.known(thing))
            groups.computeIfAbsent(key(fact), key -> new ArrayList<>())
                    .add(wording.text("handover.fact", wording.field(fact), texts.value(thing, fact)));
        List<FactRow> rows = new ArrayList<>();
        groups.forEach((key, facts) -> {
            boolean assumed = key.origin() == Origin.ASSUMED;
            rows.add(new FactRow(
                    rows.isEmpty() ? "first" : "",
                    String.join(" · ", facts),
                    wording.word(key.origin()),
                    number(key),
                    assumed ? "assumed" : ""));
        });
        return new ThingRow(wording.capitalised(wording.name(thing.id())), about(thing), rows);
    }

    private String about(Thing thing) {
        if (Stream.of(ThingId.PLACE, ThingId.GRID_OPERATOR, ThingId.SUPPLY).anyMatch(thing.id()::equals))
            return wording.text("thing." + thing.id().text());
        return wording.text(
                "handover.about", wording.word(ThingKind.of(thing)), wording.word(installation.status(thing.id())));
    }

    private EvidenceKey key(FactId fact) {
        Evidence found = installation.origins().find(fact).orElse(null);
        if (found == null) return new EvidenceKey(installation.origins().of(fact), "", "", "");
        return new EvidenceKey(
                found.origin(),
                Objects.requireNonNullElse(found.by(), ""),
                found.on() == null ? "" : found.on().toString(),
                Objects.requireNonNullElse(found.document(), ""));
    }

    private String number(EvidenceKey key) {
        if (key.by().isEmpty() && key.on().isEmpty() && key.document().isEmpty()) return "";
        return evidence.computeIfAbsent(
                        key,
                        k -> new EvidenceRow(
                                "E" + (evidence.size() + 1), wording.word(k.origin()), k.by(), k.on(), k.document()))
                .number();
    }
}
