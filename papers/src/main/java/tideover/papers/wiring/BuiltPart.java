package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.FindingChange;
import tideover.engine.rules.Finding;
import tideover.engine.site.FactId;
import tideover.engine.site.Nameplate;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.schedule.AsBuilt;
import tideover.papers.FactText;
import tideover.papers.Wording;

/** What was built, held against the plan: facts that differ, things added and left out, nameplates, findings that changed. */
final class BuiltPart implements WiringPart {

    @Override
    public String name() {
        return "built";
    }

    @Override
    public List<Listing> of(WiringData wiring) {
        Wording wording = wiring.wording();
        AsBuilt built = wiring.schedules().built();
        List<Listing.Group> groups = new ArrayList<>();
        group(groups, "differences", differences(wiring), wording);
        group(groups, "things", things(built, wording), wording);
        group(groups, "nameplates", nameplates(built, wording), wording);
        group(groups, "findings", findings(wiring), wording);
        return List.of(new Listing(
                name(),
                wording.text("wiring.built"),
                List.of(wording.text(groups.isEmpty() ? "wiring.built.none" : "wiring.built.how")),
                List.of(
                        Column.words("thing", wording.text("handover.thing"), 62),
                        Column.words("what", wording.text("wiring.what"), 78),
                        Column.words("planned", wording.text("wiring.planned"), 65),
                        Column.words("built", wording.text("wiring.asBuilt"), 65)),
                groups));
    }

    private static void group(List<Listing.Group> groups, String key, List<List<Cell>> rows, Wording wording) {
        if (!rows.isEmpty()) groups.add(new Listing.Group(wording.text("wiring.built." + key), rows));
    }

    private static List<Cell> row(ThingId thing, String what, String planned, String built, Wording wording) {
        return List.of(Cell.of(wording.name(thing), thing.text()), Cell.of(what), Cell.of(planned), Cell.of(built));
    }

    private static List<List<Cell>> differences(WiringData wiring) {
        Map<ThingId, Thing> planned = wiring.installation().site().asPlanned().planned();
        Map<ThingId, Thing> built = wiring.installation().site().planned();
        List<List<Cell>> rows = new ArrayList<>();
        for (AsBuilt.Difference difference : wiring.schedules().built().differences()) {
            FactId fact = difference.fact();
            rows.add(row(
                    fact.thing(),
                    wiring.wording().field(fact),
                    value(planned.get(fact.thing()), fact, wiring.wording()),
                    value(built.get(fact.thing()), fact, wiring.wording()),
                    wiring.wording()));
        }
        return rows;
    }

    private static String value(@Nullable Thing thing, FactId fact, Wording wording) {
        return thing == null || thing.value(fact.field()) == null
                ? wording.text("wiring.notKnown")
                : new FactText(wording).value(thing, fact);
    }

    private static List<List<Cell>> things(AsBuilt built, Wording wording) {
        List<List<Cell>> rows = new ArrayList<>();
        for (ThingId added : built.added()) rows.add(row(added, wording.text("wiring.added"), "", "", wording));
        for (ThingId removed : built.removed()) rows.add(row(removed, wording.text("wiring.leftOut"), "", "", wording));
        return rows;
    }

    private static List<List<Cell>> nameplates(AsBuilt built, Wording wording) {
        List<List<Cell>> rows = new ArrayList<>();
        for (Nameplate nameplate : built.nameplates())
            for (FactId fact : FactText.known(nameplate))
                if (!fact.field().equals("at"))
                    rows.add(row(
                            nameplate.at() == null ? nameplate.id() : nameplate.at(),
                            wording.field(fact),
                            "",
                            new FactText(wording).value(nameplate, fact),
                            wording));
        return rows;
    }

    private static List<List<Cell>> findings(WiringData wiring) {
        List<List<Cell>> rows = new ArrayList<>();
        for (FindingChange change : wiring.changes())
            rows.add(row(
                    change.key().place(),
                    wiring.wording().text("check." + change.key().check()),
                    outcome(change.before(), wiring.wording()),
                    outcome(change.after(), wiring.wording()),
                    wiring.wording()));
        return rows;
    }

    private static String outcome(@Nullable Finding finding, Wording wording) {
        return finding == null ? "–" : wording.outcome(finding.outcome());
    }
}
