package tideover.command.keeping;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Origin;
import tideover.engine.site.SupplyLines;
import tideover.files.cells.Typing;
import tideover.files.first.FirstAnswers.SourceIs;
import tideover.files.first.FirstNumbers;
import tideover.files.first.FirstNumbers.Asked;
import tideover.files.rules.RuleBooks;
import tideover.files.tables.TypicalLoad;
import tideover.files.tables.TypicalLoad.Habit;
import tideover.files.tables.TypicalValues;

/** What the options of a first visit mean; what is missing or cannot be is remembered, and told all at once. */
final class BeginAnswers {
    private static final String UNKNOWN = "unknown";
    private static final String NONE = "none";
    private static final String USUAL = "usual";

    private final Desk desk;
    private final TypicalValues typical;
    private final FirstNumbers numbers;
    private final List<String> wrong = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    BeginAnswers(Desk desk, TypicalValues typical) {
        this.desk = desk;
        this.typical = typical;
        this.numbers = new FirstNumbers(
                desk.fields(), Typing.of(desk.fields(), desk.wording().locale(), desk.wording()::word));
    }

    /** @throws Refusal where anything is missing or cannot be */
    void refuseWhatIsWrong() {
        List<String> all = new ArrayList<>(wrong);
        if (!missing.isEmpty()) {
            all.add(desk.sentence("begin.missing"));
            all.addAll(missing);
        }
        if (!all.isEmpty()) throw new Refusal(all);
    }

    String designation(@Nullable String given) {
        return given("--designation", given);
    }

    String country(@Nullable String given) {
        String typed = given("--country", given);
        String code = typed.toUpperCase(Locale.ROOT);
        if (!typed.isEmpty() && !Set.of(Locale.getISOCountries()).contains(code)) cannot("--country", typed);
        return code;
    }

    Origin origin(String given) {
        Map<String, Origin> words = new LinkedHashMap<>();
        words.put("customer", Origin.DECLARED_BY_CUSTOMER);
        words.put("read", Origin.READ);
        words.put("assumed", Origin.ASSUMED);
        return word("--said-by", given, words, Origin.ASSUMED);
    }

    @Nullable
    EarthingSystem earthing(@Nullable String given) {
        String typed = given("--earthing", given);
        if (typed.isEmpty() || typed.equalsIgnoreCase(UNKNOWN)) return null;
        String plain = typed.replace('-', '_').toUpperCase(Locale.ROOT);
        for (EarthingSystem system : EarthingSystem.values()) if (system.name().equals(plain)) return system;
        cannot("--earthing", typed);
        return null;
    }

    @Nullable
    SupplyLines lines(@Nullable String given) {
        String typed = given("--lines", given);
        if (typed.isEmpty() || typed.equalsIgnoreCase(UNKNOWN)) return null;
        return word("--lines", typed, Map.of("1", SupplyLines.ONE, "3", SupplyLines.THREE), SupplyLines.THREE);
    }

    SupplyLines forms(String given) {
        return word("--forms", given, Map.of("1", SupplyLines.ONE, "3", SupplyLines.THREE), SupplyLines.THREE);
    }

    SourceIs source(String given) {
        return word(
                "--source",
                given,
                Map.of("planned", SourceIs.TO_BE_PLANNED, "there", SourceIs.THERE),
                SourceIs.TO_BE_PLANNED);
    }

    @Nullable
    Double number(String option, Asked asked, @Nullable String given) {
        String typed = given(option, given);
        if (typed.isEmpty() || typed.equalsIgnoreCase(UNKNOWN) || typed.equalsIgnoreCase(NONE)) return null;
        return numbers.read(
                asked,
                typed,
                why -> wrong.add(
                        desk.sentence("problem.inFile", option, desk.wording().of(why))));
    }

    /**
     * Ids of loads.
     *
     * @param usual which are meant by that word
     */
    List<String> loads(String option, @Nullable String given, Predicate<TypicalLoad> usual) {
        Set<String> ids = new LinkedHashSet<>();
        for (String part : given(option, given).split(",", -1)) {
            String word = part.strip();
            String id = word.toLowerCase(Locale.ROOT);
            if (id.isEmpty() || id.equals(NONE)) continue;
            if (id.equals(USUAL)) {
                for (TypicalLoad load : typical.loads()) if (usual.test(load)) ids.add(load.id());
            } else if (typical.loads().stream().anyMatch(load -> load.id().equals(id))) {
                ids.add(id);
            } else {
                cannot(option, word);
            }
        }
        return List.copyOf(ids);
    }

    /** Whether most houses have it. */
    static boolean isUsual(TypicalLoad load) {
        return load.usual() == Habit.YES;
    }

    /** Whether it mostly stays on where it is there. */
    static boolean staysOn(TypicalLoad load, List<String> there) {
        return load.staysOn() == Habit.YES && there.contains(load.id());
    }

    private <E extends Enum<E>> E word(String option, String given, Map<String, E> words, E otherwise) {
        E meant = words.get(given.strip().toLowerCase(Locale.ROOT));
        if (meant != null) return meant;
        cannot(option, given);
        return otherwise;
    }

    /** What was given; where that is nothing, it is missing. */
    private String given(String option, @Nullable String typed) {
        String given = typed == null ? "" : typed.strip();
        if (given.isEmpty()) missing.add(desk.sentence("begin.ask", option, may(option)));
        return given;
    }

    private void cannot(String option, String given) {
        wrong.add(desk.sentence("begin.cannot", option, given, may(option)));
    }

    /** What may be given. */
    private String may(String option) {
        String key = "begin.may." + option.substring(2);
        return switch (option) {
            case "--country" -> desk.sentence(key, String.join(", ", countries()));
            case "--loads" ->
                desk.sentence(
                        key,
                        String.join(
                                ", ",
                                typical.loads().stream().map(TypicalLoad::id).toList()));
            default -> desk.sentence(key);
        };
    }

    /** Those with a rule book of their own. */
    private static Set<String> countries() {
        Set<String> ruled = new TreeSet<>();
        Arrays.stream(Locale.getISOCountries())
                .filter(code -> RuleBooks.NAMES.contains(RuleBooks.bookOf(code)))
                .forEach(ruled::add);
        return ruled;
    }
}
