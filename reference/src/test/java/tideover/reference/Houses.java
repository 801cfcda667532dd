package tideover.reference;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import tideover.engine.assessment.Assessment;
import tideover.engine.assessment.Assessor;
import tideover.engine.assessment.Studies;
import tideover.engine.protection.selectivity.TimeCurrentPaths;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.FactId;
import tideover.engine.site.Site;
import tideover.engine.site.SupplyLines;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.files.FieldTable;
import tideover.files.SiteFileResult;
import tideover.files.SiteFiles;
import tideover.files.rules.RuleBooks;
import tideover.files.tables.TableFiles;

/** Houses for tests: the examples, and variants of them written as a person would write them. */
public final class Houses {

    /** Tests run in the folder of their module. */
    public static final Path EXAMPLES = Path.of("").toAbsolutePath().getParent().resolve("examples");

    public static final Path TOWN_HOUSE = EXAMPLES.resolve("town-house.yaml");
    public static final Path FARMHOUSE = EXAMPLES.resolve("farmhouse.yaml");
    public static final Path TERRACE = EXAMPLES.resolve("terrace.yaml");

    private static final Pattern CONDUCTORS = Pattern.compile("conductors: \\[[^]]*]");

    private static final SiteFiles FILES = new SiteFiles(FieldTable.load());
    private static final Assessor ASSESSOR = new Assessor(TableFiles.load());
    private static final Map<String, RuleBook> BOOKS = new ConcurrentHashMap<>();
    private static final Map<Path, Site> READ = new ConcurrentHashMap<>();

    private Houses() {}

    /** All example houses, sound and troubled, in the order of their names. */
    public static List<Path> all() {
        return yamlBelow(EXAMPLES);
    }

    /** Site files below a folder, in the order of their names. */
    public static List<Path> yamlBelow(Path folder) {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(path -> path.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Example houses with three lines that are no variants of another. */
    public static List<Path> threeLines() {
        return all().stream()
                .filter(path -> !text(path).contains("variantOf:"))
                .filter(path -> read(path).house().supply().lines() == SupplyLines.THREE)
                .toList();
    }

    /**
     * The house of a file with each line conductor on the next line: L1 on L2, L2 on L3, L3 on L1.
     *
     * @throws IllegalArgumentException if its file names no conductors
     */
    public static Site turned(Path file) {
        String text = text(file);
        String turned = CONDUCTORS.matcher(text).replaceAll(found -> turned(found.group()));
        if (turned.equals(text)) throw new IllegalArgumentException(file + " names no conductors");
        return of(turned);
    }

    private static String turned(String conductors) {
        return conductors
                .replace("L1", "M2")
                .replace("L2", "M3")
                .replace("L3", "M1")
                .replace('M', 'L');
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(file.toString(), e);
        }
    }

    /** A house from a file that has no problems. */
    public static Site read(Path file) {
        return READ.computeIfAbsent(file, path -> sound(path.toString(), FILES.read(path)));
    }

    /** A house from the text of a site file that has no problems. */
    public static Site of(String yaml) {
        return sound("text", FILES.read("text", yaml.getBytes(StandardCharsets.UTF_8)));
    }

    /**
     * A house with some edits.
     *
     * @param edits each {@code thing.field: value}, or {@code without thing}
     */
    public static Site with(Path base, List<String> edits) {
        if (edits.isEmpty()) return read(base);
        List<String> lines =
                new ArrayList<>(List.of("format: 1", "variantOf: '" + base.toAbsolutePath() + "'", "set:"));
        List<String> taken = new ArrayList<>();
        for (String edit : edits) {
            if (edit.startsWith("without ")) taken.add(edit.substring("without ".length()));
            else lines.add("  " + edit);
        }
        lines.add("remove: " + taken);
        try {
            Path file = Files.createTempFile("house", ".yaml");
            try {
                Files.write(file, lines);
                return sound(edits.toString(), FILES.read(file));
            } finally {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The rule book that holds where a house stands. */
    public static RuleBook rules(Site site) {
        String country = Objects.requireNonNullElse(site.house().place().country(), "IEC");
        return BOOKS.computeIfAbsent(country, RuleBooks::load);
    }

    public static Assessment assess(Site site) {
        return ASSESSOR.assess(site, rules(site));
    }

    /** What the checks ask of. */
    public static Studies studies(Site site) {
        return ASSESSOR.studies(site, rules(site));
    }

    /** What belongs on the time–current sheets of a judged house. */
    public static TimeCurrentPaths curves(Assessment assessment) {
        return ASSESSOR.curves(assessment);
    }

    public static Assessment explain(Site site) {
        return ASSESSOR.explain(site, rules(site));
    }

    /** Every single fact that a site states of its supply and its things, groups of facts taken apart. */
    public static List<FactId> facts(Site site) {
        List<FactId> facts = new ArrayList<>();
        List<Thing> things = new ArrayList<>(site.planned().values());
        things.add(site.house().supply());
        for (Thing thing : things)
            for (var part : thing.getClass().getRecordComponents()) {
                if (part.getName().equals("id") || thing.value(part.getName()) == null) continue;
                if (!(thing.value(part.getName()) instanceof Record inner) || inner instanceof ThingId) {
                    facts.add(thing.fact(part.getName()));
                    continue;
                }
                for (var nested : inner.getClass().getRecordComponents())
                    if (thing.value(part.getName() + "." + nested.getName()) != null)
                        facts.add(thing.fact(part.getName() + "." + nested.getName()));
            }
        return facts;
    }

    /**
     * What is neither met nor not applicable nor left with a reason, one a line as in the files beside the examples: outcome,
     * check, place, state.
     */
    public static List<String> unsettled(Assessment assessment) {
        return assessment.findings().stream()
                .filter(finding -> !finding.outcome().isSettled() && finding.accepted() == null)
                .map(finding -> finding.outcome() + " " + finding.key())
                .sorted()
                .toList();
    }

    private static Site sound(String name, SiteFileResult result) {
        if (result instanceof SiteFileResult.Readable readable) return readable.site();
        throw new IllegalArgumentException(name + ": " + ((SiteFileResult.Refused) result).problems());
    }
}
