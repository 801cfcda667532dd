package tideover.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.AcceptedAdvice;
import tideover.engine.site.Built;
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
import tideover.files.Statements.Stated;
import tideover.files.text.Nearest;
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
    private final Statements statements = new Statements();

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
        Mapping built = part(root, SiteKeys.BUILT).orElse(empty(root.spot()));
        for (Entry entry : root.entries())
            if (!SiteKeys.ROOT.contains(entry.key())) forms.unknownKey(entry, entry.key(), SiteKeys.ROOT);
        if (house == null) {
            boolean stated = root.find(SiteKeys.HOUSE).isPresent();
            if (!stated)
                problems.add(root.spot(), SiteKeys.HOUSE, ProblemKind.KEY_MISSING, "what was found", SiteKeys.HOUSE);
            house = empty(root.spot());
        }
        checkParts(house, SiteKeys.HOUSE, SiteKeys.HOUSE_PARTS);
        checkParts(plan, SiteKeys.PLAN, SiteKeys.PLAN_PARTS);
        checkParts(built, SiteKeys.BUILT, SiteKeys.BUILT_PARTS);

        Object place = single(house, "place", ThingId.PLACE);
        Object operator = single(house, "gridOperator", ThingId.GRID_OPERATOR);
        Object supply = single(house, "supply", ThingId.SUPPLY);
        readThings(house, Side.HOUSE);
        readThings(plan, Side.PLAN);
        readThings(built, Side.BUILT);
        List<ThingId> removed = ids(plan, Side.PLAN, "removed");
        List<ThingId> swapped = ids(built, Side.BUILT, "swapped");
        List<ThingId> leftOut = ids(built, Side.BUILT, "removed");
        statements.remove(Side.PLAN, removed);
        statements.remove(Side.BUILT, leftOut);
        List<AcceptedAdvice> accepted = accepted(plan);
        List<Evidence> evidence = new EvidenceReader(table, problems, nearest, forms).read(root, statements);
        new ReferenceCheck(statements, problems, nearest).check(forms.references());
        if (!problems.isEmpty()) return null;
        return new Site(
                new House(
                        (Place) require(place),
                        (GridOperator) require(operator),
                        (Supply) require(supply),
                        statements.things(Side.HOUSE)),
                new Plan(statements.things(Side.PLAN), removed, accepted),
                new Built(statements.things(Side.BUILT), swapped, leftOut),
                evidence);
    }

    private void checkParts(Mapping side, String name, List<String> parts) {
        for (Entry entry : side.entries())
            if (!parts.contains(entry.key())) forms.unknownKey(entry, name + "." + entry.key(), parts);
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
        Stated earlier = id == null ? null : statements.first(id, side);
        Owner owner = new Owner(
                side,
                id,
                id == null ? number : id.text(),
                earlier == null ? Owner.Prefill.DEFAULTS : Owner.Prefill.NOTHING);
        Object thing = forms.read(table.form(kind), mapping, owner);
        if (id == null || thing == null) return;
        Stated stated = new Stated(kind, (Thing) thing, mapping);
        Stated same = statements.of(side).get(id);
        if (SiteKeys.RESERVED.contains(id.text())) {
            problems.add(stated.spot("id"), id + ".id", ProblemKind.ID_RESERVED, id.text());
        } else if (same != null) {
            String line = Integer.toString(same.spot("id").line());
            problems.add(stated.spot("id"), id + ".id", ProblemKind.ID_TWICE, id.text(), line);
        } else {
            statements.put(side, id, stated);
            if (earlier != null && earlier.kind() != kind)
                problems.add(
                        stated.spot("id"),
                        id + ".id",
                        ProblemKind.KIND_CHANGED,
                        id.text(),
                        earlier.kind().section(),
                        kind.section());
        }
    }

    /** A list of things that is no field of any of them. */
    private List<ThingId> ids(Mapping part, Side side, String key) {
        List<ThingId> ids = new ArrayList<>();
        String where = (side == Side.PLAN ? SiteKeys.PLAN : SiteKeys.BUILT) + "." + key;
        Node list = part.find(key).orElse(null);
        if (list == null || list.isNothing()) return ids;
        Field field = table.find(key).orElseThrow();
        for (Node item : list(list, where)) {
            if (!(item instanceof Scalar scalar) || !ThingId.isWellFormed(scalar.text())) {
                problems.add(item.spot(), where, ProblemKind.ID_FORM, FormReader.found(item));
                continue;
            }
            ThingId id = new ThingId(scalar.text());
            if (ids.contains(id)) problems.add(item.spot(), where, ProblemKind.LIST_TWICE, field.words(), id.text());
            else ids.add(id);
            forms.references().add(new Reference(side, null, key, where, field, id, null, item.spot()));
        }
        return ids;
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
