package tideover.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import tideover.engine.site.ThingKind;
import tideover.files.text.Numbers;

/** The field tables of docs/site-file.md and the copy of the schema are written from the field table. */
class SiteFilePageTest {
    private static final Path DOCS = Path.of("..", "docs");
    private static final String MARK =
            "<!-- All below is written by SiteFilePageTest; run it with -Dtideover.write=true. -->\n";

    @Test
    void thePageOfFieldsIsUpToDate() throws IOException {
        Path file = DOCS.resolve("site-file.md");
        String page = Files.readString(file);
        assertThat(page).contains(MARK);
        check(file, page.substring(0, page.indexOf(MARK) + MARK.length()) + fields());
    }

    @Test
    void theCopyOfTheSchemaIsUpToDate() throws IOException {
        check(DOCS.resolve("site.schema.json"), SiteSchema.of(TestSites.TABLE));
    }

    @Test
    void theExampleOnThePageIsASoundSite() throws IOException {
        Matcher yaml = Pattern.compile("```yaml\n(.*?)```", Pattern.DOTALL)
                .matcher(Files.readString(DOCS.resolve("site-file.md")));
        assertThat(yaml.find()).isTrue();
        assertThat(TestSites.problems(yaml.group(1))).isEmpty();
    }

    private static void check(Path file, String fresh) throws IOException {
        if (Boolean.getBoolean("tideover.write")) Files.writeString(file, fresh);
        else
            assertThat(Files.readString(file))
                    .as("write it anew with -Dtideover.write=true")
                    .isEqualTo(fresh);
    }

    private static String fields() {
        Map<String, List<Field>> sections = new LinkedHashMap<>();
        for (Field row : TestSites.TABLE.rows())
            sections.computeIfAbsent(row.path().replaceFirst("\\..*", ""), section -> new ArrayList<>())
                    .add(row);
        StringBuilder page = new StringBuilder("\n# Every field\n");
        page.append(
                "\n**?** tells how one gets a fact that is missing. *Default* means: filled in as an assumption.\n");
        sections.entrySet().stream()
                // What many things have is best read before them.
                .sorted(Comparator.comparingInt(section -> order(section.getKey())))
                .forEach(section -> table(section.getKey(), section.getValue(), page));
        return page.toString();
    }

    private static int order(String section) {
        if (section.equals("*")) return 3;
        if (SiteKeys.isSingle(section)) return SiteKeys.HOUSE_PARTS.indexOf(section);
        int part = SiteKeys.PLAN_PARTS.indexOf(section);
        if (section.equals("swapped")) part = SiteKeys.PLAN_PARTS.size();
        return part < 0 ? 100 : 4 + part;
    }

    private static void table(String section, List<Field> rows, StringBuilder page) {
        page.append("\n## ").append(section.equals("*") ? "Fields that many things have" : "`" + section + "`");
        page.append("\n\n");
        ThingKind.findBySection(section)
                .ifPresent(kind -> page.append("Also: ").append(shared(kind)).append(".\n\n"));
        List<Field> inside =
                rows.stream().filter(row -> row.path().contains(".")).toList();
        if (inside.size() < rows.size()) page.append(rows.get(0).meaning()).append("\n\n");
        if (inside.isEmpty()) return;
        page.append("| field | holds | ? | meaning |\n| --- | --- | --- | --- |\n");
        for (Field row : inside) {
            page.append("| `")
                    .append(row.path().substring(section.length() + 1))
                    .append("` | ");
            page.append(holds(row)).append(" | ").append(way(row)).append(" | ");
            page.append(row.meaning()).append(" |\n");
        }
    }

    /** Fields of the kind that stand in the table of many things. */
    private static String shared(ThingKind kind) {
        List<String> own = TestSites.TABLE.rows().stream().map(Field::path).toList();
        List<String> names = new ArrayList<>();
        for (String name : TestSites.TABLE.form(kind).names())
            if (!own.contains(kind.section() + "." + name)) names.add("`" + name + "`");
        return String.join(", ", names);
    }

    private static String holds(Field row) {
        StringBuilder text = new StringBuilder(
                switch (row.kind()) {
                    case ID -> "id";
                    case TEXT -> "text";
                    case TEXTS -> "list of texts";
                    case NUMBER -> "number";
                    case WHOLE -> "whole number";
                    case YES_NO -> "true or false";
                    case WORD -> words(row);
                    case WORDS -> "list of " + words(row);
                    case DATE -> "day";
                    case TERMINAL -> "terminal, written port/terminal";
                    case REFERENCE -> "id of " + target(row);
                    case REFERENCES -> "ids of " + target(row);
                    case GROUP -> "fields:";
                    case GROUPS -> "list of:";
                });
        if (row.min() != null && row.max() != null)
            text.append(" %s to %s %s"
                    .formatted(Numbers.shortest(row.min()), Numbers.shortest(row.max()), row.unit())
                    .stripTrailing());
        if (row.need() == Field.Need.NEEDED) text.append(", needed");
        if (row.defaultValue() != null) text.append(". Default ").append(row.defaultValue());
        return text.toString();
    }

    private static String words(Field row) {
        String path = row.path().startsWith("*") ? concrete(row.path()) : row.path();
        String section = path.substring(0, path.indexOf('.'));
        RecordForm form = TestSites.TABLE.form(section);
        RecordForm.Part part = null;
        for (String name : path.substring(section.length() + 1).split("\\.")) {
            part = (part == null ? form : part.requireNested()).find(name).orElseThrow();
        }
        List<String> words = new ArrayList<>();
        for (Object word : part.element().getEnumConstants()) words.add(word.toString());
        return String.join(", ", words);
    }

    private static String concrete(String path) {
        for (ThingKind kind : ThingKind.values())
            if (TestSites.TABLE.find(kind.section() + path.substring(1)).isPresent())
                return kind.section() + path.substring(1);
        throw new AssertionError(path + " belongs to no kind of thing");
    }

    private static String target(Field row) {
        return switch (row.refersTo()) {
            case FEEDER -> "`supply` or a thing with `fedFrom`";
            case EARTH -> "`main-earth`, an electrode or a thing with `fedFrom`";
            case INVERTER -> "an inverter";
            case CIRCUIT -> "a circuit";
            case SOURCE -> "`supply`, an inverter, a battery or a PV array";
            case METER -> "a meter";
            case DEVICE -> "a device";
            case PORT -> "a control or bus port";
            case LISTED -> "things";
            case ANY -> "any thing";
        };
    }

    private static String way(Field row) {
        return row.kind() == FieldKind.ID
                        || row.path().startsWith("accepted")
                        || row.path().startsWith("evidence")
                ? ""
                : row.source().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
