package tideover.files.rules;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.engine.rules.Force;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Source;
import tideover.engine.rules.Stance;
import tideover.engine.rules.Topic;
import tideover.engine.rules.Verification;
import tideover.files.rules.Book.Form;
import tideover.files.rules.Book.Rank;
import tideover.files.yaml.Node;
import tideover.files.yaml.Spot;
import tideover.files.yaml.YamlResult;
import tideover.files.yaml.YamlText;

/** Reads one rule book and notes everything that is wrong with it. */
final class BookReader {

    private static final List<String> BOOK_KEYS = List.of("book", "over", "name", "topics", "withoutValue", "limits");
    private static final List<String> LIMIT_KEYS =
            List.of("limit", "choices", "value", "force", "source", "clause", "verification", "note");

    private final Rank rank;
    private final Map<String, Form> known;
    private final Complaints complaints;

    private final Map<Topic, Stance> topics = new EnumMap<>(Topic.class);
    private final Map<String, Form> forms = new TreeMap<>();
    private final List<Limit> limits = new ArrayList<>();
    private final Set<String> seen = new HashSet<>();
    private String name = "";

    /**
     * @param known limits the lowest book declares; none while that is read
     */
    BookReader(Rank rank, Map<String, Form> known, Complaints complaints) {
        this.rank = rank;
        this.known = known;
        this.complaints = complaints;
    }

    /** The book, sound only if no problem was noted; nothing if there is no telling what it is. */
    @Nullable
    Book read(String file, byte[] bytes) {
        YamlResult result = YamlText.read(file, bytes);
        complaints.of(result.problems());
        if (result.root() == null) return null;
        if (!(result.root() instanceof Node.Mapping root)) {
            complaints.at(result.root().spot(), "", RuleProblem.BOOK_FORM);
            return null;
        }
        checkKeys(root, BOOK_KEYS, "");
        name = text(root, "book", "");
        String over = rank == Rank.LOWEST ? null : text(root, "over", "");
        String title = text(root, "name", "");
        root.find("topics").ifPresent(this::readTopics);
        if (rank != Rank.OVERLAY) requireEveryTopic(root);
        if (rank == Rank.LOWEST)
            root.find("withoutValue")
                    .ifPresent(node -> texts(node, "withoutValue").forEach(id -> forms.put(id, new Form(List.of()))));
        root.find("limits").ifPresent(this::readLimits);
        return new Book(name, over, title, topics, forms, limits, Digest.of(bytes));
    }

    private void readTopics(Node node) {
        if (!(node instanceof Node.Mapping mapping)) {
            complaints.at(node.spot(), "topics", RuleProblem.TOPICS_FORM);
            return;
        }
        for (Node.Entry entry : mapping.entries()) {
            String field = "topics." + entry.key();
            Topic topic = word(Topic.class, entry.key(), entry.spot(), field);
            Stance stance = word(
                    Stance.class, scalar(entry.value(), field), entry.value().spot(), field);
            if (topic != null && stance != null) topics.put(topic, stance);
        }
    }

    private void requireEveryTopic(Node.Mapping root) {
        List<String> undeclared = Arrays.stream(Topic.values())
                .filter(topic -> !topics.containsKey(topic))
                .map(Enum::name)
                .toList();
        if (!undeclared.isEmpty())
            complaints.at(root.spot(), "topics", RuleProblem.TOPICS_UNDECLARED, name, String.join(", ", undeclared));
    }

    private void readLimits(Node node) {
        if (!(node instanceof Node.Sequence sequence)) {
            complaints.at(node.spot(), "limits", RuleProblem.LIMITS_FORM);
            return;
        }
        int number = 0;
        for (Node item : sequence.items()) {
            String field = "limits[" + number++ + "]";
            if (item instanceof Node.Mapping mapping) readLimit(mapping, field);
            else complaints.at(item.spot(), field, RuleProblem.LIMIT_FORM);
        }
    }

    private void readLimit(Node.Mapping mapping, String field) {
        checkKeys(mapping, LIMIT_KEYS, field + ".");
        String id = text(mapping, "limit", field + ".");
        if (id.isEmpty()) return;
        Spot spot = spot(mapping, "limit");
        if (!seen.add(id)) {
            complaints.at(spot, field + ".limit", RuleProblem.LIMIT_TWICE, id);
            return;
        }
        Topic topic = Topic.findByLimit(id).orElse(null);
        Form form = rank == Rank.LOWEST ? declare(mapping, id, field) : known.get(id);
        if (topic == null || form == null) {
            complaints.limitUnknown(spot, field + ".limit", id, known.keySet());
            return;
        }
        Stance stance = topics.getOrDefault(topic, Stance.OWN);
        if (stance == Stance.AS_IEC || stance == Stance.UNKNOWN)
            complaints.at(spot, field + ".limit", RuleProblem.LIMIT_UNCOVERED, id, topic.name(), stance.name());

        Force force = word(Force.class, mapping, "force", field);
        Source source = source(mapping, field);
        Node note = mapping.find("note").orElse(null);
        String remark = note == null ? null : scalar(note, field + ".note");
        String written = text(mapping, "value", field + ".");
        Spot at = spot(mapping, "value");
        if (written.isEmpty()) return;
        if (form.isNumber()) {
            Double figure = number(written, at, field + ".value");
            if (figure != null && force != null && source != null)
                limits.add(new Limit(id, figure, null, force, source, name, remark));
        } else if (!form.choices().contains(written)) {
            complaints.wordUnknown(at, field + ".value", written, form.choices());
        } else if (force != null && source != null) {
            limits.add(new Limit(id, null, written, force, source, name, remark));
        }
    }

    private Form declare(Node.Mapping mapping, String id, String field) {
        Form form = new Form(mapping.find("choices")
                .map(node -> texts(node, field + ".choices"))
                .orElse(List.of()));
        forms.put(id, form);
        return form;
    }

    private List<String> texts(Node node, String field) {
        if (!(node instanceof Node.Sequence sequence)) return List.of(scalar(node, field));
        List<String> texts = new ArrayList<>();
        for (Node item : sequence.items()) texts.add(scalar(item, field));
        return texts;
    }

    private @Nullable Source source(Node.Mapping mapping, String field) {
        String document = text(mapping, "source", field + ".");
        String clause = text(mapping, "clause", field + ".");
        Verification verification = word(Verification.class, mapping, "verification", field);
        return document.isEmpty() || clause.isEmpty() || verification == null
                ? null
                : new Source(document, clause, verification);
    }

    private @Nullable Double number(String written, Spot spot, String field) {
        double figure;
        try {
            figure = Double.parseDouble(written);
        } catch (NumberFormatException e) {
            figure = Double.NaN;
        }
        if (Double.isFinite(figure) && figure >= 0) return figure;
        complaints.at(spot, field, RuleProblem.NUMBER_FORM, written);
        return null;
    }

    private <E extends Enum<E>> @Nullable E word(Class<E> kind, Node.Mapping mapping, String key, String field) {
        String written = text(mapping, key, field + ".");
        return written.isEmpty() ? null : word(kind, written, spot(mapping, key), field + "." + key);
    }

    private <E extends Enum<E>> @Nullable E word(Class<E> kind, String written, Spot spot, String field) {
        List<String> allowed = new ArrayList<>();
        for (E constant : kind.getEnumConstants()) {
            if (constant.name().equals(written)) return constant;
            allowed.add(constant.name());
        }
        complaints.wordUnknown(spot, field, written, allowed);
        return null;
    }

    /** A text that must be there; empty if it is not, which is noted. */
    private String text(Node.Mapping mapping, String key, String prefix) {
        Node node = mapping.find(key).orElse(null);
        String text = node == null ? "" : scalar(node, prefix + key);
        if (text.isBlank() && (node == null || node instanceof Node.Scalar))
            complaints.at(node == null ? mapping.spot() : node.spot(), prefix + key, RuleProblem.KEY_MISSING, key);
        return text.strip();
    }

    private String scalar(Node node, String field) {
        if (node instanceof Node.Scalar scalar) return scalar.isNothing() ? "" : scalar.text();
        complaints.at(node.spot(), field, RuleProblem.TEXT_FORM, field);
        return "";
    }

    private void checkKeys(Node.Mapping mapping, Collection<String> allowed, String prefix) {
        for (Node.Entry entry : mapping.entries())
            if (!allowed.contains(entry.key()))
                complaints.keyUnknown(entry.spot(), prefix + entry.key(), entry.key(), allowed);
    }

    private static Spot spot(Node.Mapping mapping, String key) {
        return mapping.find(key).map(Node::spot).orElse(mapping.spot());
    }
}
