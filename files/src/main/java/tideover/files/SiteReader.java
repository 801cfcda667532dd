package tideover.files;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.AcceptedAdvice;
import tideover.engine.site.Evidence;
import tideover.engine.site.GridOperator;
import tideover.engine.site.House;
import tideover.engine.site.Place;
import tideover.engine.site.Plan;
import tideover.engine.site.Site;
import tideover.engine.site.Supply;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.FormReader.Owner;
import tideover.files.Reference.Side;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Node.Sequence;
import tideover.files.yaml.Spot;

/** From the tree of one whole site to the site; every problem on the way is collected. */
final class SiteReader {
    private final FieldTable table;
    private final Problems problems;
    private final Nearest nearest;
    private final FormReader forms;
    private final Map<ThingId, Stated> found = new LinkedHashMap<>();
    private final Map<ThingId, Stated> planned = new LinkedHashMap<>();

    SiteReader(FieldTable table, Problems problems) {
        this.table = table;
        this.problems = problems;
        this.nearest = new Nearest();
        this.forms = new FormReader(problems, nearest);
    }

    /** The site, or nothing where there are problems. */
    @Nullable
    Site read(Mapping root) {
        Mapping house = part(root, SiteKeys.HOUSE).orElse(null);
        Mapping plan = part(root, SiteKeys.PLAN).orElse(empty(root.spot()));
        for (Entry entry : root.entries())
            if (!SiteKeys.ROOT.contains(entry.key())) forms.unknownKey(entry, entry.key(), SiteKeys.ROOT);
        if (house == null) {
            boolean stated = root.find(SiteKeys.HOUSE).isPresent();
            if (!stated)
                problems.add(root.spot(), SiteKeys.HOUSE, ProblemKind.KEY_MISSING, "what was found", SiteKeys.HOUSE);
            house = empty(root.spot());
        }
        for (Entry entry : house.entries())
            if (!SiteKeys.HOUSE_PARTS.contains(entry.key()))
                forms.unknownKey(entry, SiteKeys.HOUSE + "." + entry.key(), SiteKeys.HOUSE_PARTS);
        for (Entry entry : plan.entries())
            if (!SiteKeys.PLAN_PARTS.contains(entry.key()))
                forms.unknownKey(entry, SiteKeys.PLAN + "." + entry.key(), SiteKeys.PLAN_PARTS);

        Object place = single(house, "place", ThingId.PLACE);
        Object operator = single(house, "gridOperator", ThingId.GRID_OPERATOR);
        Object supply = single(house, "supply", ThingId.SUPPLY);
        readThings(house, Side.HOUSE);
        readThings(plan, Side.PLAN);
        List<ThingId> removed = removed(plan);
        List<AcceptedAdvice> accepted = accepted(plan);
        List<Evidence> evidence = new EvidenceReader(table, problems, nearest, forms).read(root, found, planned);
        new ReferenceCheck(found, planned, removed, problems, nearest).check(forms.references());
        if (!problems.isEmpty()) return null;
        return new Site(
                new House(
                        (Place) require(place),
                        (GridOperator) require(operator),
                        (Supply) require(supply),
                        things(found)),
                new Plan(things(planned), removed, accepted),
                evidence);
    }

    private static List<Thing> things(Map<ThingId, Stated> stated) {
        List<Thing> things = new ArrayList<>(stated.size());
        for (Stated each : stated.values()) things.add(each.thing());
        return things;
    }

    private static Object require(@Nullable Object value) {
        if (value == null) throw new IllegalStateException("a part is missing though no problem was found");
        return value;
    }

    private @Nullable Object single(Mapping house, String section, ThingId id) {
        // What is not stated at all still takes its defaults.
        Mapping mapping = part(house, section).orElse(empty(house.spot()));
        return forms.read(table.form(section), mapping, new Owner(Side.HOUSE, id, id.text(), Owner.Prefill.DEFAULTS));
    }

    private void readThings(Mapping side, Side where) {
        for (ThingKind kind : ThingKind.values()) {
            Node section = side.find(kind.section()).orElse(null);
            if (section == null || section.isNothing()) continue;
            int number = 0;
            for (Node item : list(section, kind.section())) {
                number++;
                String name = kind.section() + "[" + number + "]";
                if (item instanceof Mapping mapping) readThing(kind, mapping, where, name);
                else problems.add(item.spot(), name, ProblemKind.MAPPING_EXPECTED, name, FormReader.found(item));
            }
        }
    }

    private void readThing(ThingKind kind, Mapping mapping, Side side, String number) {
        ThingId id = mapping.find("id")
                .filter(node -> node instanceof Scalar scalar && ThingId.isWellFormed(scalar.text()))
                .map(node -> new ThingId(((Scalar) node).text()))
                .orElse(null);
        Map<ThingId, Stated> same = side == Side.HOUSE ? found : planned;
        boolean altered = side == Side.PLAN && id != null && found.containsKey(id);
        Owner owner = new Owner(
                side, id, id == null ? number : id.text(), altered ? Owner.Prefill.NOTHING : Owner.Prefill.DEFAULTS);
        Object thing = forms.read(table.form(kind), mapping, owner);
        if (id == null || thing == null) return;
        Stated stated = new Stated(kind, (Thing) thing, mapping);
        Stated first = same.get(id);
        if (SiteKeys.RESERVED.contains(id.text())) {
            problems.add(stated.spot("id"), id + ".id", ProblemKind.ID_RESERVED, id.text());
        } else if (first != null) {
            String line = Integer.toString(first.spot("id").line());
            problems.add(stated.spot("id"), id + ".id", ProblemKind.ID_TWICE, id.text(), line);
        } else {
            same.put(id, stated);
            Stated asFound = found.get(id);
            if (asFound != null && asFound.kind() != kind)
                problems.add(
                        stated.spot("id"),
                        id + ".id",
                        ProblemKind.KIND_CHANGED,
                        id.text(),
                        asFound.kind().section(),
                        kind.section());
        }
    }

    private List<ThingId> removed(Mapping plan) {
        List<ThingId> removed = new ArrayList<>();
        String where = SiteKeys.PLAN + ".removed";
        Node list = plan.find("removed").orElse(null);
        if (list == null || list.isNothing()) return removed;
        Field field = table.find("removed").orElseThrow();
        for (Node item : list(list, where)) {
            if (!(item instanceof Scalar scalar) || !ThingId.isWellFormed(scalar.text())) {
                problems.add(item.spot(), where, ProblemKind.ID_FORM, FormReader.found(item));
                continue;
            }
            ThingId id = new ThingId(scalar.text());
            if (removed.contains(id))
                problems.add(item.spot(), where, ProblemKind.LIST_TWICE, field.words(), id.text());
            else removed.add(id);
            forms.references().add(new Reference(Side.PLAN, null, "removed", where, field, id, item.spot()));
        }
        return removed;
    }

    private List<AcceptedAdvice> accepted(Mapping plan) {
        List<AcceptedAdvice> accepted = new ArrayList<>();
        Node list = plan.find("accepted").orElse(null);
        if (list == null || list.isNothing()) return accepted;
        int number = 0;
        for (Node item : list(list, SiteKeys.PLAN + ".accepted")) {
            number++;
            String where = "%s.accepted[%d]".formatted(SiteKeys.PLAN, number);
            if (!(item instanceof Mapping mapping)) {
                problems.add(item.spot(), where, ProblemKind.MAPPING_EXPECTED, where, FormReader.found(item));
                continue;
            }
            Owner owner = new Owner(Side.PLAN, null, where, Owner.Prefill.NOTHING);
            if (!(forms.read(table.form("accepted"), mapping, owner) instanceof AcceptedAdvice advice)) continue;
            accepted.add(advice);
            int dot = advice.check().indexOf('.');
            if (dot < 1 || dot == advice.check().length() - 1)
                problems.add(
                        mapping.find("check").orElse(mapping).spot(),
                        where + ".check",
                        ProblemKind.CHECK_FORM,
                        ValueReader.shortened(advice.check()));
        }
        return accepted;
    }

    /** A part that has parts of its own; empty where it is left out or after a problem. */
    private Optional<Mapping> part(Mapping around, String key) {
        Node node = around.find(key).orElse(null);
        if (node == null) return Optional.empty();
        if (node instanceof Mapping mapping) return Optional.of(mapping);
        if (node.isNothing()) return Optional.of(empty(node.spot()));
        problems.add(node.spot(), key, ProblemKind.MAPPING_EXPECTED, key, FormReader.found(node));
        return Optional.empty();
    }

    private List<Node> list(Node node, String where) {
        if (node instanceof Sequence list) return list.items();
        problems.add(node.spot(), where, ProblemKind.LIST_EXPECTED, where, FormReader.found(node));
        return List.of();
    }

    private static Mapping empty(Spot spot) {
        return Mapping.of(spot, List.of());
    }
}
