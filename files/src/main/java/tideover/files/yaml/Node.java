package tideover.files.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** One value of a file and where it stands. Immutable: an alias is the same node met twice. */
public sealed interface Node {
    /** Where it begins. */
    Spot spot();

    /** Number of values in it, itself counted, aliases counted as if written out. */
    long size();

    /** Whether it is a plain {@code null}, {@code ~} or nothing at all. */
    default boolean isNothing() {
        return false;
    }

    /** Keys with their values, in the order of the file; no key twice. */
    record Mapping(Spot spot, List<Entry> entries, long size) implements Node {
        public Mapping {
            entries = List.copyOf(entries);
        }

        public static Mapping of(Spot spot, List<Entry> entries) {
            long size = 1;
            for (Entry entry : entries) size += entry.value().size();
            return new Mapping(spot, entries, size);
        }

        /** The value of a key. */
        public Optional<Node> find(String key) {
            for (Entry entry : entries) if (entry.key().equals(key)) return Optional.of(entry.value());
            return Optional.empty();
        }

        /** A copy in which this key has this value; a new key comes last. */
        public Mapping with(Entry changed) {
            List<Entry> copy = new ArrayList<>(entries);
            copy.replaceAll(entry -> entry.key().equals(changed.key()) ? changed : entry);
            if (!copy.contains(changed)) copy.add(changed);
            return of(spot, copy);
        }

        /**
         * A copy with another value at a path of keys; groups on the way are made where they are missing. An item of a
         * list is named by its number from 1.
         *
         * @param value nothing takes out what is there
         * @return nothing where the path leads to an item that the list does not have
         */
        public Optional<Mapping> put(List<String> path, Spot spot, @Nullable Node value) {
            String key = path.get(0);
            if (path.size() == 1) return Optional.of(value == null ? without(key) : with(new Entry(key, spot, value)));
            List<String> rest = path.subList(1, path.size());
            Node inner = find(key).orElse(null);
            if (inner instanceof Sequence list)
                return list.put(rest, spot, value).map(changed -> with(new Entry(key, spot, changed)));
            if (!(inner instanceof Mapping) && value == null) return Optional.of(this);
            Mapping group = inner instanceof Mapping stated ? stated : of(spot, List.of());
            return group.put(rest, spot, value)
                    .map(changed -> changed.entries().isEmpty() ? without(key) : with(new Entry(key, spot, changed)));
        }

        /** A copy without this key. */
        public Mapping without(String key) {
            List<Entry> copy = new ArrayList<>(entries);
            copy.removeIf(entry -> entry.key().equals(key));
            return of(spot, copy);
        }
    }

    /** A key, where it stands, and its value. */
    record Entry(String key, Spot spot, Node value) {}

    /** A list of values. */
    record Sequence(Spot spot, List<Node> items, long size) implements Node {
        public Sequence {
            items = List.copyOf(items);
        }

        public static Sequence of(Spot spot, List<? extends Node> items) {
            long size = 1;
            for (Node item : items) size += item.size();
            return new Sequence(spot, List.copyOf(items), size);
        }

        private Optional<Sequence> put(List<String> path, Spot spot, @Nullable Node value) {
            List<Node> copy = new ArrayList<>(items);
            List<String> rest = path.subList(1, path.size());
            for (int i = 0; i < copy.size(); i++) {
                if (!path.get(0).equals(Integer.toString(i + 1))) continue;
                if (rest.isEmpty() && value == null) {
                    copy.remove(i);
                } else if (rest.isEmpty()) {
                    copy.set(i, Objects.requireNonNull(value));
                } else if (copy.get(i) instanceof Mapping group) {
                    Optional<Mapping> changed = group.put(rest, spot, value);
                    if (changed.isEmpty()) return Optional.empty();
                    copy.set(i, changed.get());
                } else {
                    return Optional.empty();
                }
                return Optional.of(of(this.spot, copy));
            }
            return Optional.empty();
        }
    }

    /** A single value as written. */
    record Scalar(Spot spot, String text, Style style) implements Node {
        @Override
        public long size() {
            return 1;
        }

        /** Whether the text may stand for a number or a word such as {@code true}. */
        public boolean isPlain() {
            return style == Style.PLAIN;
        }

        @Override
        public boolean isNothing() {
            if (style != Style.PLAIN) return false;
            return switch (text) {
                case "", "~", "null", "Null", "NULL" -> true;
                default -> false;
            };
        }
    }

    /** How a single value is written. */
    enum Style {
        PLAIN,
        /** In quotes or as a block: always text. */
        QUOTED
    }
}
