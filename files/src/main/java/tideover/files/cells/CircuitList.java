package tideover.files.cells;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Circuit;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.files.Edit;
import tideover.files.EditResult;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.InputProblem;
import tideover.files.SiteEdits;
import tideover.files.cells.CircuitCsv.Listed;
import tideover.files.cells.Csv.Row;
import tideover.files.text.Nearest;

/** One list of circuits, read and compared with a site. */
final class CircuitList {

    private static final Pattern COMMA = Pattern.compile("\\s*[+-]?[0-9]+,[0-9]+(?:\\s*[^0-9,.]+)?\\s*");
    /** No number is longer. */
    private static final int LONGEST_NUMBER = 60;

    private static final int MOST_ROWS = 1000;

    private static final Set<String> SHORTHAND = Set.of("protection", "rcd", "cable");

    /** Where a cell stands. */
    private record Place(int line, int column) {}

    private final FieldTable table;
    private final SiteEdits siteEdits;
    private final Map<String, Field> columns;
    private final Site site;
    private final Listed listed;
    private final String file;
    private final Set<String> circuits;
    private final SiteEdits.Facts facts;
    private final Nearest nearest = new Nearest();
    private final List<InputProblem> problems = new ArrayList<>();
    private final List<Edit> edits = new ArrayList<>();
    /** By what the edits are about: id and field, or id alone for a row. */
    private final Map<String, Place> places = new HashMap<>();

    private int added;

    CircuitList(
            FieldTable table, SiteEdits siteEdits, Map<String, Field> columns, Site site, Listed listed, String file) {
        this.table = table;
        this.siteEdits = siteEdits;
        this.columns = columns;
        this.site = site;
        this.listed = listed;
        this.file = file;
        this.circuits = new HashSet<>(listed.circuits(site));
        this.facts = siteEdits.facts(site);
    }

    CircuitCsvResult read(byte[] bytes) {
        String text = Csv.decoded(file, bytes, problems);
        if (text != null) read(text);
        if (problems.isEmpty()) judge();
        if (problems.isEmpty()) return new CircuitCsvResult.Read(edits, added);
        problems.sort(Comparator.comparingInt(InputProblem::line).thenComparingInt(InputProblem::column));
        return new CircuitCsvResult.Refused(problems.stream().distinct().toList());
    }

    private void read(String text) {
        char separator = Csv.separator(text, columns.keySet());
        List<Row> rows = new ArrayList<>();
        Csv.read(file, text, separator, rows, problems);
        rows.removeIf(Row::isBlank);
        if (rows.isEmpty()) {
            if (problems.isEmpty()) problems.add(CellProblem.LIST_EMPTY.at(file, 0, 0, ""));
            return;
        }
        if (rows.size() > MOST_ROWS + 1) {
            problems.add(CellProblem.LIST_TOO_LONG.at(
                    file, 0, 0, "", String.valueOf(rows.size() - 1), String.valueOf(MOST_ROWS)));
            return;
        }
        Map<Integer, String> header = header(rows.get(0));
        List<Row> body = rows.subList(1, rows.size());
        if (!header.containsValue(CircuitCsv.ID)) return;
        Typing typing = Typing.ofFile(table, separator != ',' && hasDecimalComma(header, body) ? ',' : '.');
        Map<String, Integer> seen = new HashMap<>();
        for (Row row : body) row(header, rows.get(0).cells().size(), row, typing, seen);
    }

    /** Names of the columns by their place from 0; those without a name hold notes and are not read. */
    private Map<Integer, String> header(Row row) {
        Map<Integer, String> header = new TreeMap<>();
        Map<String, String> known = new LinkedHashMap<>();
        columns.forEach((column, field) -> {
            if (field.kind() != FieldKind.GROUP || SHORTHAND.contains(column))
                known.put(column.toLowerCase(Locale.ROOT), column);
        });
        for (int i = 0; i < row.cells().size(); i++) {
            String name = Csv.unguarded(row.cells().get(i)).strip();
            String column = known.get(name.toLowerCase(Locale.ROOT));
            if (column == null) {
                unknown(row, i, name, known);
            } else if (header.containsValue(column)) {
                problems.add(CellProblem.COLUMN_TWICE.at(file, row.line(), i + 1, "", column));
            } else {
                header.put(i, column);
            }
        }
        for (String column : header.values())
            for (Map.Entry<Integer, String> other : header.entrySet())
                if (other.getValue().startsWith(column + "."))
                    problems.add(CellProblem.COLUMN_INSIDE.at(
                            file, row.line(), other.getKey() + 1, "", column, other.getValue()));
        if (!header.containsValue(CircuitCsv.ID)) problems.add(CellProblem.LIST_WITHOUT_ID.at(file, row.line(), 1, ""));
        return header;
    }

    private void unknown(Row row, int index, String name, Map<String, String> known) {
        if (name.isEmpty()) return;
        String list = String.join(", ", known.values());
        String near = nearest.of(name, known.values());
        problems.add(
                near == null
                        ? CellProblem.COLUMN_UNKNOWN.at(file, row.line(), index + 1, "", Typing.shortened(name), list)
                        : CellProblem.COLUMN_UNKNOWN_NEAR.at(
                                file, row.line(), index + 1, "", Typing.shortened(name), near, list));
    }

    /** Whether the numbers of the list are written with a comma; then a point may part thousands. */
    private boolean hasDecimalComma(Map<Integer, String> header, List<Row> body) {
        for (Row row : body)
            for (Map.Entry<Integer, String> column : header.entrySet())
                if (Objects.requireNonNull(columns.get(column.getValue())).kind() == FieldKind.NUMBER
                        && column.getKey() < row.cells().size()
                        && isWithComma(row.cells().get(column.getKey()))) return true;
        return false;
    }

    private static boolean isWithComma(String cell) {
        return cell.length() <= LONGEST_NUMBER && COMMA.matcher(cell).matches();
    }

    private void row(Map<Integer, String> header, int width, Row row, Typing typing, Map<String, Integer> seen) {
        if (row.cells().size() > width
                && !row.cells().subList(width, row.cells().size()).stream().allMatch(String::isBlank))
            problems.add(CellProblem.ROW_TOO_LONG.at(
                    file, row.line(), width + 1, "", String.valueOf(row.cells().size()), String.valueOf(width)));
        Map<String, String> cells = new LinkedHashMap<>();
        Map<String, Place> where = new HashMap<>();
        header.forEach((index, column) -> {
            // A row that ends early says nothing of the columns behind.
            if (index < row.cells().size())
                cells.put(column, Csv.unguarded(row.cells().get(index)));
            where.put(column, new Place(row.line(), index + 1));
        });
        String id = cells.getOrDefault(CircuitCsv.ID, "").strip();
        Place at = Objects.requireNonNull(where.get(CircuitCsv.ID));
        if (!isUsable(id, at, cells.getOrDefault("designation", ""), seen)) return;
        places.put(id, at);
        List<String> conductors = conductors(id, cells, typing);
        Map<String, @Nullable String> values = new LinkedHashMap<>();
        cells.forEach((column, cell) -> {
            if (column.equals(CircuitCsv.ID)) return;
            Place place = Objects.requireNonNull(where.get(column));
            read(id, column, cell, place, conductors, typing, values);
        });
        if (circuits.contains(id)) compare(id, values);
        else add(id, values);
    }

    private boolean isUsable(String id, Place at, String designation, Map<String, Integer> seen) {
        CellProblem problem = null;
        String argument = Typing.shortened(id);
        if (id.isEmpty()) {
            problem = CellProblem.ROW_WITHOUT_ID;
            argument = proposed(designation);
        } else if (!ThingId.isWellFormed(id)) {
            problem = CellProblem.ROW_ID_FORM;
        } else if (!circuits.contains(id)) {
            Thing other = find(id);
            if (other != null)
                problem = other instanceof Circuit ? CellProblem.ROW_NOT_LISTED : CellProblem.ROW_OF_OTHER_KIND;
        }
        if (problem != null) problems.add(problem.at(file, at.line(), at.column(), CircuitCsv.ID, argument));
        Integer before = id.isEmpty() ? null : seen.putIfAbsent(id, at.line());
        if (before != null)
            problems.add(CellProblem.ROW_TWICE.at(
                    file, at.line(), at.column(), CircuitCsv.ID, argument, String.valueOf(before)));
        return problem == null && before == null;
    }

    private @Nullable Thing find(String id) {
        List<Thing> all = new ArrayList<>(site.house().things());
        all.addAll(site.plan().things());
        all.addAll(site.built().things());
        return all.stream()
                .filter(thing -> thing.id().text().equals(id))
                .findFirst()
                .orElse(null);
    }

    /** An id made of the printed name, not yet taken. */
    private String proposed(String designation) {
        String id = designation
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^[^a-z]+|-+$", "");
        String base = id.isEmpty() ? "circuit" : id.substring(0, Math.min(50, id.length()));
        String free = base;
        for (int i = 2; find(free) != null || places.containsKey(free); i++) free = base + "-" + i;
        return free;
    }

    /** Those of the row, else those stated. */
    private List<String> conductors(String id, Map<String, String> cells, Typing typing) {
        Field field = Objects.requireNonNull(columns.get("conductors"));
        String cell = cells.get("conductors");
        if (cell != null)
            return typing.read(field, cell) instanceof Typed.Value value && value.text() != null
                    ? Typing.items(value.text())
                    : List.of();
        return facts.find(listed.path(id + ".conductors")).map(Typing::items).orElse(List.of());
    }

    private void read(
            String id,
            String column,
            String cell,
            Place place,
            List<String> conductors,
            Typing typing,
            Map<String, @Nullable String> values) {
        Field field = Objects.requireNonNull(columns.get(column));
        places.put(id + "." + column, place);
        if (field.kind() == FieldKind.TEXT) {
            values.put(column, cell.isBlank() ? null : cell);
            return;
        }
        Typed typed = typing.read(field, cell, conductors);
        if (typed instanceof Typed.NotUnderstood not) {
            InputProblem problem = not.problem();
            problems.add(new InputProblem(file, place.line(), place.column(), id + "." + column, problem.phrase()));
        } else if (typed instanceof Typed.Facts group) {
            group.facts().forEach((name, text) -> values.put(column + "." + name, text));
        } else if (typed instanceof Typed.Value value) {
            values.put(column, value.text());
        }
    }

    private void compare(String id, Map<String, @Nullable String> values) {
        values.forEach((column, after) -> {
            String path = listed.path(id + "." + column);
            String before = facts.find(path).orElse(null);
            if (!Objects.equals(before, after)) edits.add(new Edit(path, before, after));
        });
    }

    private void add(String id, Map<String, @Nullable String> values) {
        FactTree circuit = new FactTree();
        values.forEach((column, text) -> {
            if (text != null)
                circuit.put(
                        column, table.find(CircuitCsv.SECTION + "." + column).orElseThrow(), text);
        });
        edits.add(new Edit(listed.pathOfNew(id), null, circuit.json()));
        added++;
    }

    /** What a single cell cannot show: ranges, things that are not there, loops. */
    private void judge() {
        if (!(siteEdits.apply(site, edits) instanceof EditResult.Refused refused)) return;
        for (InputProblem problem : refused.problems()) {
            String about = withoutSide(problem.field());
            while (!places.containsKey(about) && about.indexOf('.') > 0)
                about = about.substring(0, about.lastIndexOf('.'));
            Place place = places.getOrDefault(about, new Place(0, 0));
            problems.add(new InputProblem(file, place.line(), place.column(), problem.field(), problem.phrase()));
        }
    }

    private static String withoutSide(String field) {
        return field.replaceFirst("^(?:house|plan|built)\\.", "").replaceFirst("^circuits[.\\[]", "");
    }
}
