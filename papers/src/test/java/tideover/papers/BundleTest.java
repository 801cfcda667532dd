package tideover.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The texts: all there, all used, all fit to be filled in. */
class BundleTest {

    private static final Path ENGINE = Path.of("..", "engine", "src", "main", "java", "tideover", "engine");

    /** A key handed to a finding, a calculation or a phrase; a plus behind it says that it is only the beginning. */
    private static final Pattern SAID = Pattern.compile(
            "(?:\\.(?:met|notMet|notCertain|notApplicable|line)|Phrase\\.of)\\(\\s*\"([^\"]+)\"(\\s*\\+)?");

    private static final Pattern ENUM = Pattern.compile("public enum (\\w+)");

    private static final Map<String, String> TEXTS = Bundle.of(Locale.ENGLISH).texts();

    static Stream<String> keys() {
        return TEXTS.keySet().stream().sorted();
    }

    private static List<Path> engineSources() throws IOException {
        try (Stream<Path> paths = Files.walk(ENGINE)) {
            return paths.filter(path -> path.toString().endsWith(".java"))
                    .sorted()
                    .toList();
        }
    }

    private static void said(Set<String> whole, Set<String> begun) throws IOException {
        for (Path source : engineSources()) {
            Matcher call = SAID.matcher(Files.readString(source));
            while (call.find()) (call.group(2) == null ? whole : begun).add(call.group(1));
        }
    }

    @Test
    void everythingTheEngineSaysHasASentence() throws IOException {
        Set<String> whole = new TreeSet<>();
        Set<String> begun = new TreeSet<>();
        said(whole, begun);
        // The engine says some hundred things: an empty set would only show that the pattern no longer fits.
        assertThat(whole).hasSizeGreaterThan(80);
        assertThat(whole).allMatch(TEXTS::containsKey);
        for (String beginning : begun)
            assertThat(TEXTS.keySet()).as(beginning).anyMatch(key -> key.startsWith(beginning));
    }

    @Test
    void noSentenceIsKeptThatNothingSays() throws IOException {
        Set<String> whole = new TreeSet<>();
        Set<String> begun = new TreeSet<>();
        said(whole, begun);
        assertThat(keysOf("findings", "calculation"))
                .allMatch(key -> whole.contains(key) || begun.stream().anyMatch(key::startsWith));
    }

    @Test
    void everyWordOfTheSiteAndTheRulesCanBeSaid() throws Exception {
        List<String> missing = new ArrayList<>();
        for (Path source : engineSources()) {
            String room = source.getParent().getFileName().toString();
            Matcher type = ENUM.matcher(Files.readString(source));
            // Units stand in amounts, not as words; nested kinds are never said.
            if (!Set.of("site", "rules").contains(room)
                    || !type.find()
                    || type.group(1).equals("Unit")) continue;
            String name = source.getFileName().toString().replace(".java", "");
            if (!type.group(1).equals(name)) continue;
            for (Object constant :
                    Class.forName("tideover.engine." + room + "." + name).getEnumConstants())
                if (!TEXTS.containsKey(name + "." + ((Enum<?>) constant).name())) missing.add(name + "." + constant);
        }
        assertThat(missing).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("keys")
    void everyPlaceIsFilledAndEveryApostropheIsPrinted(String key) {
        String text = TEXTS.get(key);
        int places = IntStream.range(0, 10)
                .filter(place -> text.contains("{" + place))
                .map(place -> place + 1)
                .max()
                .orElse(0);
        Object[] filled = IntStream.range(0, places)
                .mapToObj(place -> (Object) (700 + place))
                .toArray();
        String sentence = new MessageFormat(text, Locale.ENGLISH).format(filled);
        // A single apostrophe would quote what follows it and leave braces behind.
        assertThat(sentence).doesNotContain("{").doesNotContain("}");
        assertThat(sentence.chars().filter(c -> c == '\'').count())
                .isEqualTo(text.chars().filter(c -> c == '\'').count() / 2);
        for (int place = 0; place < places; place++)
            if (text.contains("{" + place + "}")) assertThat(sentence).contains(String.valueOf(700 + place));
    }

    @ParameterizedTest
    @MethodSource("keys")
    void noSentenceScoldsOrBegs(String key) {
        assertThat(TEXTS.get(key).toLowerCase(Locale.ROOT))
                .doesNotContainPattern("\\b(invalid|illegal|please|oops|sorry)\\b");
    }

    @Test
    void noKeyStandsInTwoFiles() throws IOException {
        Map<String, String> seen = new HashMap<>();
        for (String file : Bundle.FILES)
            for (String key : keysOf(file))
                assertThat(seen.put(key, file)).as(key).isNull();
    }

    private static Set<String> keysOf(String... files) throws IOException {
        Set<String> keys = new TreeSet<>();
        for (String file : files) {
            Properties properties = new Properties();
            try (InputStream bytes = Bundle.class.getResourceAsStream(file + ".properties")) {
                assertThat(bytes).as(file).isNotNull();
                properties.load(new InputStreamReader(bytes, StandardCharsets.UTF_8));
            }
            keys.addAll(properties.stringPropertyNames());
        }
        return keys;
    }
}
