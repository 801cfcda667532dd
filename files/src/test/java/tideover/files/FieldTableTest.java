package tideover.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import tideover.engine.site.FactSource;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;

/** Holds the field table against the records of the site, both ways. */
class FieldTableTest {
    private static final FieldTable TABLE = FieldTable.load();

    /** Suffixes of the style guide and how their unit is printed. */
    private static final Map<String, String> UNITS = Map.ofEntries(
            Map.entry("Ohm", "Ω"),
            Map.entry("A", "A"),
            Map.entry("V", "V"),
            Map.entry("W", "W"),
            Map.entry("Va", "VA"),
            Map.entry("Wh", "Wh"),
            Map.entry("M", "m"),
            Map.entry("Mm2", "mm²"),
            Map.entry("S", "s"),
            Map.entry("Nm", "Nm"),
            Map.entry("Hz", "Hz"),
            Map.entry("Deg", "°"),
            Map.entry("DegC", "°C"),
            Map.entry("Ratio", ""));

    @Test
    void everyComponentOfEveryRecordHasARow() {
        // Building the forms looks up every component and throws for one without a row.
        assertThat(TABLE.all()).hasSizeGreaterThan(200).doesNotHaveDuplicates();
    }

    @Test
    void everyRowBelongsToAComponent() {
        Set<String> paths = new HashSet<>();
        for (Field field : TABLE.all()) {
            paths.add(field.path());
            paths.add("*" + field.path().substring(Math.max(0, field.path().indexOf('.'))));
        }
        assertThat(TABLE.rows()).allSatisfy(row -> assertThat(paths).contains(row.path()));
    }

    @Test
    void whatARowSaysItHoldsIsWhatTheRecordHolds() {
        for (RecordForm.Part part : parts()) {
            Class<?> type = part.element();
            FieldKind kind = part.field().kind();
            boolean fits = switch (kind) {
                case ID, REFERENCE, REFERENCES -> type == ThingId.class;
                case TERMINAL -> type == TerminalId.class;
                case TEXT, TEXTS -> type == String.class;
                case NUMBER -> type == Double.class;
                case WHOLE -> type == Integer.class;
                case YES_NO -> type == Boolean.class;
                case WORD, WORDS -> type.isEnum();
                case DATE -> type == LocalDate.class;
                case GROUP, GROUPS -> type.isRecord();
            };
            assertThat(fits)
                    .as("%s: %s for %s", part.field().path(), kind, type)
                    .isTrue();
            assertThat(part.accessor().getReturnType() == List.class)
                    .as(part.field().path())
                    .isEqualTo(kind.isList());
        }
    }

    @Test
    void theUnitOfARowIsThatOfItsName() {
        for (RecordForm.Part part : parts()) {
            Field field = part.field();
            if (field.kind() != FieldKind.NUMBER) continue;
            String suffix = UNITS.keySet().stream()
                    .filter(field.name()::endsWith)
                    .max((a, b) -> Integer.compare(a.length(), b.length()))
                    .orElseThrow(() -> new AssertionError(field.path() + " has no unit in its name"));
            assertThat(field.unit()).as(field.path()).isEqualTo(UNITS.get(suffix));
        }
    }

    @Test
    void everyNumberHasARangeThatKeepsNonsenseOutAndLetsItsDefaultIn() {
        for (Field field : TABLE.all()) {
            boolean number = field.kind() == FieldKind.NUMBER || field.kind() == FieldKind.WHOLE;
            assertThat(field.min() != null && field.max() != null)
                    .as(field.path())
                    .isEqualTo(number);
            if (!number) continue;
            assertThat(field.min()).as(field.path()).isLessThan(field.max());
            if (field.defaultValue() != null)
                assertThat(Double.parseDouble(field.defaultValue())).isBetween(field.min(), field.max());
        }
    }

    @Test
    void onlyReferencesSayWhatTheyReferTo() {
        for (Field field : TABLE.all()) {
            boolean reference = Set.of(FieldKind.REFERENCE, FieldKind.REFERENCES, FieldKind.TERMINAL)
                    .contains(field.kind());
            assertThat(field.refersTo() != null).as(field.path()).isEqualTo(reference);
        }
    }

    @Test
    void everyRowHasWordsAndAMeaningThatIsASentence() {
        for (Field field : TABLE.rows()) {
            assertThat(field.words()).as(field.path()).isNotBlank().doesNotEndWith(".");
            assertThat(field.meaning()).as(field.path()).endsWith(".");
        }
    }

    @Test
    void aThingOnlyNeedsItsId() {
        for (ThingKind kind : ThingKind.values())
            for (RecordForm.Part part : TABLE.form(kind).parts())
                assertThat(part.field().need() == Field.Need.NEEDED)
                        .as(part.field().path())
                        .isEqualTo(part.name().equals("id"));
    }

    @Test
    void whatDecidesSeparationLinkAndRcdIsNeverFilledIn() {
        for (Field field : TABLE.all()) {
            boolean decides = field.path().contains(".rcd.")
                    || field.path().contains("neutral")
                    || field.path().endsWith(".poles")
                    || field.path().endsWith(".conductors")
                    || field.path().startsWith("neutralEarth");
            if (decides) assertThat(field.defaultValue()).as(field.path()).isNull();
        }
    }

    @Test
    void labelsAndSourcesAreFoundBySectionAndField() {
        assertThat(TABLE.words("circuits", "cable.lengthM")).isEqualTo("length of cable");
        assertThat(TABLE.words("inverters", "fedFrom")).isEqualTo("connected to");
        assertThat(TABLE.source("gridOperator", "neutralSeparation")).isEqualTo(FactSource.ASK_OPERATOR);
        assertThat(TABLE.find("inverters.overload.timeS"))
                .hasValueSatisfying(f -> assertThat(f.unit()).isEqualTo("s"));
        assertThat(TABLE.find("meters.rcd")).isEmpty();
        assertThat(TABLE.find("garages.rcd")).isEmpty();
    }

    private static List<RecordForm.Part> parts() {
        List<RecordForm.Part> parts = new ArrayList<>();
        for (String section : List.of("place", "gridOperator", "supply", "accepted", "evidence"))
            add(TABLE.form(section), parts);
        for (ThingKind kind : ThingKind.values()) add(TABLE.form(kind), parts);
        return parts;
    }

    private static void add(RecordForm form, List<RecordForm.Part> parts) {
        for (RecordForm.Part part : form.parts()) {
            parts.add(part);
            if (part.nested() != null) add(part.nested(), parts);
        }
    }
}
