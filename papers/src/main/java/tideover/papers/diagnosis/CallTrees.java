package tideover.papers.diagnosis;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tideover.papers.diagnosis.CallNode.Caution;

/** The short trees for what callers mostly have, read from {@code calls.csv}. */
public final class CallTrees {

    private static final int COLUMNS = 7;

    private final Map<String, String[]> rows = new LinkedHashMap<>();
    private final Set<String> roots = new LinkedHashSet<>();

    private CallTrees() {}

    /** All trees. */
    public static CallTrees load() {
        CallTrees trees = new CallTrees();
        List<String> lines = lines();
        for (String line : lines.subList(1, lines.size())) {
            String[] row = line.split(",", -1);
            if (row.length != COLUMNS) throw new IllegalStateException("calls.csv: " + line);
            trees.rows.put(row[0], row);
            trees.roots.add(row[0]);
        }
        for (String[] row : trees.rows.values()) {
            trees.roots.remove(row[1]);
            trees.roots.remove(row[2]);
        }
        return trees;
    }

    private static List<String> lines() {
        try (InputStream bytes = CallTrees.class.getResourceAsStream("calls.csv")) {
            if (bytes == null) throw new IllegalStateException("calls.csv is not there");
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What callers have, by the name of its first question. */
    public List<String> troubles() {
        return List.copyOf(roots);
    }

    /** The tree of one trouble. */
    public Optional<CallNode> find(String trouble) {
        return roots.contains(trouble) ? Optional.of(node(trouble)) : Optional.empty();
    }

    private CallNode node(String id) {
        String[] row = rows.get(id);
        if (row == null) throw new IllegalStateException("calls.csv has no row " + id);
        List<CallFact> facts = new ArrayList<>();
        for (String fact : row[3].split(" ")) if (!fact.isEmpty()) facts.add(CallFact.valueOf(fact));
        boolean asks = !row[1].isEmpty();
        return new CallNode(id, asks ? node(row[1]) : null, asks ? node(row[2]) : null, facts, Caution.valueOf(row[4]));
    }
}
