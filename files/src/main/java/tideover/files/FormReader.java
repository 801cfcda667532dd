package tideover.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.files.Reference.Side;
import tideover.files.text.Nearest;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Entry;
import tideover.files.yaml.Node.Mapping;
import tideover.files.yaml.Node.Scalar;
import tideover.files.yaml.Node.Sequence;
import tideover.files.yaml.Spot;

/** Reads the fields of a record from a mapping, key by key, and notes what names other things and what was filled in. */
final class FormReader {
    /**
     * Whose fields are being read.
     *
     * @param side    where they are stated
     * @param id      of the thing; nothing where it has none or a bad one
     * @param where   how messages begin the name of a field
     * @param prefill whether missing facts take their defaults
     */
    record Owner(Side side, @Nullable ThingId id, String where, Prefill prefill) {
        /** Whether missing facts take their defaults. */
        enum Prefill {
            DEFAULTS,
            /** A planned change of a found thing says only what changes. */
            NOTHING
        }
    }

    private final Problems problems;
    private final Nearest nearest;
    private final ValueReader values;
    private final List<Reference> references = new ArrayList<>();
    private final List<FactId> assumed = new ArrayList<>();

    FormReader(Problems problems, Nearest nearest) {
        this.problems = problems;
        this.nearest = nearest;
        this.values = new ValueReader(problems, nearest);
    }

    /** Every place read so far where a thing names another. */
    List<Reference> references() {
        return references;
    }

    /** Facts filled in from the table. */
    List<FactId> assumed() {
        return assumed;
    }

    /** The record, or nothing where a field it cannot be without is missing. */
    @Nullable
    Object read(RecordForm form, Mapping mapping, Owner owner) {
        return read(form, mapping, owner, "");
    }

    private @Nullable Object read(RecordForm form, Mapping mapping, Owner owner, String path) {
        @Nullable Object[] record = new Object[form.parts().size()];
        for (Entry entry : mapping.entries()) {
            RecordForm.Part part = form.find(entry.key()).orElse(null);
            if (part == null) unknownKey(entry, where(owner, path + entry.key()), form.names());
            else if (!entry.value().isNothing()) record[part.index()] = value(part, entry.value(), owner, path);
        }
        boolean complete = true;
        for (RecordForm.Part part : form.parts()) {
            if (record[part.index()] != null) continue;
            Field field = part.field();
            if (field.need() == Field.Need.NEEDED) {
                complete = false;
                boolean stated = mapping.find(part.name())
                        .filter(node -> !node.isNothing())
                        .isPresent();
                if (!stated)
                    problems.add(
                            mapping.spot(),
                            where(owner, path + part.name()),
                            ProblemKind.KEY_MISSING,
                            field.words(),
                            part.name());
            } else if (field.defaultValue() != null
                    && owner.prefill() == Owner.Prefill.DEFAULTS
                    && owner.id() != null) {
                Scalar filledIn = new Scalar(mapping.spot(), field.defaultValue(), Node.Style.PLAIN);
                record[part.index()] = values.read(part, filledIn, where(owner, path + part.name()));
                assumed.add(new FactId(owner.id(), path + part.name()));
            }
        }
        return complete ? form.create(record) : null;
    }

    private @Nullable Object value(RecordForm.Part part, Node node, Owner owner, String path) {
        Field field = part.field();
        String here = path + part.name();
        String where = where(owner, here);
        if (!field.kind().isList()) return single(part, node, owner, here, where);
        if (!(node instanceof Sequence list)) {
            problems.add(node.spot(), where, ProblemKind.LIST_EXPECTED, field.words(), found(node));
            return null;
        }
        List<Object> items = new ArrayList<>(list.items().size());
        Set<Object> seen = new HashSet<>();
        boolean groups = field.kind() == FieldKind.GROUPS;
        // A default inside a list could not be named as a fact.
        Owner inside = groups ? new Owner(owner.side(), owner.id(), owner.where(), Owner.Prefill.NOTHING) : owner;
        int number = 0;
        for (Node item : list.items()) {
            number++;
            String itemHere = groups ? here + "[" + number + "]" : here;
            Object value = single(part, item, inside, itemHere, where(owner, itemHere));
            if (value == null) continue;
            items.add(value);
            if (!groups && !seen.add(value))
                problems.add(item.spot(), where, ProblemKind.LIST_TWICE, field.words(), value.toString());
        }
        if (part.element() == Conductor.class && items.size() == list.items().size())
            checkConductors(seen, list.spot(), where);
        return items;
    }

    private @Nullable Object single(RecordForm.Part part, Node node, Owner owner, String path, String where) {
        RecordForm nested = part.nested();
        if (nested != null) {
            if (node instanceof Mapping mapping) return read(nested, mapping, owner, path + ".");
            problems.add(
                    node.spot(),
                    where,
                    ProblemKind.MAPPING_EXPECTED,
                    part.field().words(),
                    found(node));
            return null;
        }
        Object value = values.read(part, node, where);
        if (part.field().refersTo() != null && value instanceof ThingId target) {
            references.add(
                    new Reference(owner.side(), owner.id(), path, where, part.field(), target, null, node.spot()));
        } else if (value instanceof TerminalId terminal) {
            references.add(new Reference(
                    owner.side(),
                    owner.id(),
                    path,
                    where,
                    part.field(),
                    terminal.port(),
                    terminal.name(),
                    node.spot()));
        }
        return value;
    }

    private void checkConductors(Set<Object> conductors, Spot spot, String where) {
        boolean pen = conductors.contains(Conductor.PEN);
        if (pen && conductors.contains(Conductor.N)) problems.add(spot, where, ProblemKind.N_AND_PEN);
        if (pen && conductors.contains(Conductor.PE)) problems.add(spot, where, ProblemKind.PE_AND_PEN);
        for (Object conductor : conductors) if (((Conductor) conductor).isLine()) return;
        problems.add(spot, where, ProblemKind.NO_LINE);
    }

    /** A key that nobody knows. */
    void unknownKey(Entry entry, String where, Collection<String> allowed) {
        String list = String.join(", ", allowed);
        String near = nearest.of(entry.key(), allowed);
        String key = ValueReader.shortened(entry.key());
        if (near == null) problems.add(entry.spot(), where, ProblemKind.KEY_UNKNOWN, key, list);
        else problems.add(entry.spot(), where, ProblemKind.KEY_UNKNOWN_NEAR, key, near, list);
    }

    /** What stands at a place, for a message. */
    static String found(Node node) {
        if (node instanceof Scalar scalar) {
            String text = ValueReader.shortened(scalar.text());
            return scalar.isPlain() ? text : '"' + text + '"';
        }
        return node instanceof Sequence ? "[…]" : "{…}";
    }

    private static String where(Owner owner, String path) {
        return owner.where().isEmpty() ? path : owner.where() + "." + path;
    }
}
