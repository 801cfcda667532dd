package tideover.files;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.AcceptedAdvice;
import tideover.engine.site.Evidence;
import tideover.engine.site.FactSource;
import tideover.engine.site.FieldWords;
import tideover.engine.site.GridOperator;
import tideover.engine.site.Place;
import tideover.engine.site.Supply;
import tideover.engine.site.ThingKind;

/**
 * Every field a site file may have: what it holds, in which unit and range, what it is called and how one gets it. Drives
 * reader, schema and documentation. Safe to share between threads.
 */
public final class FieldTable implements FieldWords {
    private static final String EVERY_SECTION = "*";
    /** What is no list of things. */
    private static final Map<String, Class<?>> SINGLE = Map.of(
            "place", Place.class,
            "gridOperator", GridOperator.class,
            "supply", Supply.class,
            "accepted", AcceptedAdvice.class,
            "evidence", Evidence.class);

    private final Map<String, Field> rows;
    private final Map<String, RecordForm> forms = new HashMap<>();

    private FieldTable(Map<String, Field> rows) {
        this.rows = rows;
    }

    /** The table that comes with the program. */
    public static FieldTable load() {
        Map<String, Field> rows = new LinkedHashMap<>();
        try (InputStream in = FieldTable.class.getResourceAsStream("fields.csv")) {
            if (in == null) throw new IllegalStateException("fields.csv is not on the class path");
            CsvReader.CsvReaderBuilder builder = CsvReader.builder();
            for (CsvRecord line : builder.ofCsvRecord(new InputStreamReader(in, StandardCharsets.UTF_8))) {
                if (line.getStartingLineNumber() == 1) continue;
                Field field = field(line);
                rows.put(field.path(), field);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new FieldTable(rows);
    }

    private static Field field(CsvRecord line) {
        return new Field(
                line.getField(0),
                FieldKind.valueOf(line.getField(1)),
                line.getField(2),
                number(line.getField(3)),
                number(line.getField(4)),
                line.getField(5).isEmpty() ? null : line.getField(5),
                line.getField(6).equals("YES") ? Field.Need.NEEDED : Field.Need.OPTIONAL,
                ReferTo.of(line.getField(7)),
                FactSource.valueOf(line.getField(8)),
                line.getField(9),
                line.getField(10));
    }

    private static @Nullable Double number(String text) {
        return text.isEmpty() ? null : Double.valueOf(text);
    }

    /**
     * One field.
     *
     * @param path section and field, such as {@code circuits.cable.lengthM}
     */
    public Optional<Field> find(String path) {
        int dot = path.indexOf('.');
        if (dot < 0) return Optional.ofNullable(rows.get(path));
        String section = path.substring(0, dot);
        return hasForm(section) ? form(section).findField(path.substring(dot + 1)) : Optional.empty();
    }

    /**
     * What a field is to the program, or one value of its list: a number, an id, an enum of words, the record of a group.
     *
     * @throws IllegalArgumentException if there is no such field in the record of a thing
     */
    public Class<?> valueType(Field field) {
        int dot = field.path().indexOf('.');
        String section = field.path().substring(0, Math.max(dot, 0));
        return (hasForm(section)
                        ? form(section).findPart(field.path().substring(dot + 1))
                        : Optional.<RecordForm.Part>empty())
                .orElseThrow(() -> new IllegalArgumentException("there is no field " + field.path() + " of a thing"))
                .element();
    }

    /** Every field of every section, in the order of the records. */
    public List<Field> all() {
        List<Field> all = new ArrayList<>();
        for (String section : List.of("place", "gridOperator", "supply")) add(section, all);
        for (ThingKind kind : ThingKind.values()) form(kind).addFields(all);
        all.add(require("swapped"));
        all.add(require("removed"));
        for (String section : List.of("accepted", "evidence")) add(section, all);
        return all;
    }

    private void add(String section, List<Field> all) {
        all.add(require(section));
        form(section).addFields(all);
    }

    @Override
    public String words(String section, String field) {
        return require(section + "." + field).words();
    }

    @Override
    public FactSource source(String section, String field) {
        return require(section + "." + field).source();
    }

    /** The row of a field of a record; written for its own section or for all sections together. */
    Field requireRow(String path) {
        Field own = rows.get(path);
        if (own != null) return own;
        Field shared = rows.get(EVERY_SECTION + path.substring(path.indexOf('.')));
        if (shared == null) throw new IllegalStateException("fields.csv has no row for " + path);
        return shared.at(path);
    }

    private Field require(String path) {
        return find(path).orElseThrow(() -> new IllegalArgumentException("there is no field " + path));
    }

    /** The form of a listed thing. */
    RecordForm form(ThingKind kind) {
        return form(kind.section());
    }

    /** The form of what stands under a section. */
    synchronized RecordForm form(String section) {
        return forms.computeIfAbsent(section, name -> RecordForm.of(type(name), name, this));
    }

    /** The rows as written. */
    List<Field> rows() {
        return List.copyOf(rows.values());
    }

    private static boolean hasForm(String section) {
        return SINGLE.containsKey(section) || ThingKind.findBySection(section).isPresent();
    }

    private static Class<?> type(String section) {
        Class<?> single = SINGLE.get(section);
        if (single != null) return single;
        return ThingKind.findBySection(section)
                .orElseThrow(() -> new IllegalArgumentException("there is no section " + section))
                .type();
    }
}
