package tideover.files;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Evidence;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;
import tideover.files.FormReader.Owner;
import tideover.files.Reference.Side;
import tideover.files.Statements.Stated;
import tideover.files.text.Nearest;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Sequence;
import tideover.files.yaml.Spot;

/** Reads where facts come from, and adds an assumption for every fact that was filled in. */
final class EvidenceReader {
    private final FieldTable table;
    private final Problems problems;
    private final Nearest nearest;
    private final FormReader forms;

    EvidenceReader(FieldTable table, Problems problems, Nearest nearest, FormReader forms) {
        this.table = table;
        this.problems = problems;
        this.nearest = nearest;
        this.forms = forms;
    }

    List<Evidence> read(Mapping root, Statements statements) {
        List<Evidence> all = new ArrayList<>();
        Set<String> filledIn = new HashSet<>();
        for (FactId fact : forms.assumed()) filledIn.add(fact.toString());
        Map<String, Integer> lines = new HashMap<>();
        int number = 0;
        for (Node item : items(root)) {
            number++;
            String where = "%s[%d]".formatted(SiteKeys.EVIDENCE, number);
            if (!(item instanceof Mapping mapping)) {
                problems.add(item.spot(), where, ProblemKind.MAPPING_EXPECTED, where, FormReader.found(item));
                continue;
            }
            Owner owner = new Owner(Side.HOUSE, null, where, Owner.Prefill.NOTHING);
            if (!(forms.read(table.form(SiteKeys.EVIDENCE), mapping, owner) instanceof Evidence evidence)) continue;
            Spot spot = mapping.find("about").orElse(mapping).spot();
            Integer first = lines.putIfAbsent(evidence.about(), spot.line());
            if (first != null)
                problems.add(spot, where, ProblemKind.EVIDENCE_TWICE, evidence.about(), first.toString());
            checkAbout(evidence.about(), spot, where + ".about", statements);
            // Whatever is said of a value nobody stated, the value now there is an assumption.
            if (!filledIn.contains(evidence.about())) all.add(evidence);
        }
        for (FactId fact : forms.assumed()) all.add(Evidence.assumed(fact));
        return all;
    }

    private List<Node> items(Mapping root) {
        Node node = root.find(SiteKeys.EVIDENCE).orElse(null);
        if (node == null || node.isNothing()) return List.of();
        if (node instanceof Sequence list) return list.items();
        problems.add(
                node.spot(), SiteKeys.EVIDENCE, ProblemKind.LIST_EXPECTED, SiteKeys.EVIDENCE, FormReader.found(node));
        return List.of();
    }

    private void checkAbout(String about, Spot spot, String where, Statements statements) {
        if (SiteKeys.SIDES.contains(about)) return;
        int dot = about.indexOf('.');
        String thing = dot < 0 ? about : about.substring(0, dot);
        RecordForm form = form(thing, statements);
        if (form == null) {
            unknownThing(thing, spot, where, statements);
        } else if (dot >= 0 && form.findField(about.substring(dot + 1)).isEmpty()) {
            List<String> allowed = form.fieldPaths();
            String field = about.substring(dot + 1);
            String near = nearest.of(field, allowed);
            String list = String.join(", ", allowed);
            if (near == null) problems.add(spot, where, ProblemKind.FACT_UNKNOWN, about, list);
            else problems.add(spot, where, ProblemKind.FACT_UNKNOWN_NEAR, about, thing + "." + near, list);
        }
    }

    private @Nullable RecordForm form(String thing, Statements statements) {
        if (!ThingId.isWellFormed(thing)) return null;
        ThingId id = new ThingId(thing);
        if (id.equals(ThingId.PLACE)) return table.form("place");
        if (id.equals(ThingId.GRID_OPERATOR)) return table.form("gridOperator");
        if (id.equals(ThingId.SUPPLY)) return table.form("supply");
        Stated stated = statements.first(id, Side.BUILT);
        return stated == null ? null : table.form(stated.kind());
    }

    private void unknownThing(String thing, Spot spot, String where, Statements statements) {
        Set<String> names =
                new TreeSet<>(List.of(ThingId.PLACE.text(), ThingId.GRID_OPERATOR.text(), ThingId.SUPPLY.text()));
        names.addAll(SiteKeys.SIDES);
        for (ThingId id : statements.ids(Side.BUILT)) names.add(id.text());
        String words = table.find("evidence.about").orElseThrow().words();
        String near = nearest.of(thing, names);
        String shortened = ValueReader.shortened(thing);
        if (near == null) problems.add(spot, where, ProblemKind.THING_UNKNOWN, words, shortened);
        else problems.add(spot, where, ProblemKind.THING_UNKNOWN_NEAR, words, shortened, near);
    }
}
