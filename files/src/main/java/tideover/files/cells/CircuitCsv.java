package tideover.files.cells;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.site.Circuit;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.SiteEdits;

/**
 * The circuit list as CSV, both ways: one row for each circuit, one column for each of its fields, named as in the site
 * file. What is written reads back without a difference. Safe to share between threads.
 */
public final class CircuitCsv {

    static final String SECTION = "circuits";
    static final String ID = "id";

    /** Which circuits are listed, and where changes go. */
    public enum Listed {
        /** As found; changes go into the house. */
        FOUND("house", "house"),
        /** As planned; changes go into the plan. */
        PLANNED("plan", "plan"),
        /** As stated last; changes go where a circuit is stated last, new circuits into the plan. */
        LAST("", "plan");

        private final String side;
        private final String sideOfNew;

        Listed(String side, String sideOfNew) {
            this.side = side;
            this.sideOfNew = sideOfNew;
        }

        /** Path of a fact of a listed circuit. */
        String path(String fact) {
            return side.isEmpty() ? fact : side + "." + fact;
        }

        /** Path of a circuit that is new. */
        String pathOfNew(String id) {
            return sideOfNew + "." + SECTION + "." + id;
        }

        private Collection<? extends Thing> things(Site site) {
            return switch (this) {
                case FOUND -> site.house().things();
                case PLANNED -> site.asPlanned().planned().values();
                case LAST -> site.planned().values();
            };
        }

        /** Ids of the circuits, in the order in which they are written. */
        List<String> circuits(Site site) {
            List<String> ids = new ArrayList<>();
            for (Thing thing : things(site))
                if (thing instanceof Circuit) ids.add(thing.id().text());
            return ids;
        }
    }

    private final FieldTable table;
    private final SiteEdits edits;
    private final Map<String, Field> columns = new LinkedHashMap<>();

    public CircuitCsv(FieldTable table) {
        this.table = table;
        this.edits = new SiteEdits(table);
        for (Field field : table.all())
            if (field.path().startsWith(SECTION + "."))
                columns.put(field.path().substring(SECTION.length() + 1), field);
    }

    /** The list: every field in a column, in the order of the site file; an empty cell where nothing is known. */
    public String write(Site site, Listed listed) {
        List<String> header = columns.entrySet().stream()
                .filter(column -> column.getValue().kind() != FieldKind.GROUP)
                .map(Map.Entry::getKey)
                .toList();
        List<List<String>> rows = new ArrayList<>();
        rows.add(header);
        SiteEdits.Facts facts = edits.facts(site);
        Typing typing = Typing.ofFile(table, '.');
        for (String id : listed.circuits(site)) {
            List<String> row = new ArrayList<>(header.size());
            for (String column : header)
                row.add(
                        column.equals(ID)
                                ? id
                                : facts.find(listed.path(id + "." + column))
                                        .map(value -> cell(typing, column, value))
                                        .orElse(""));
            rows.add(row);
        }
        return Csv.written(rows);
    }

    private String cell(Typing typing, String column, String value) {
        Field field =
                columns.getOrDefault(column, table.find(SECTION + "." + column).orElseThrow());
        return field.kind().isList() ? typing.text(field, value) : value;
    }

    /**
     * Reads a list and compares it with a site. Columns and rows that are not there stay as they are; an empty cell
     * forgets its fact; a row with a new id adds a circuit.
     *
     * @param name how messages call the file
     */
    public CircuitCsvResult read(Site site, Listed listed, String name, byte[] bytes) {
        return new CircuitList(table, edits, columns, site, listed, name).read(bytes);
    }
}
