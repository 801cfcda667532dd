package tideover.reference.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.text.MessageFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Properties;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.files.InputProblem;
import tideover.files.ProblemKind;
import tideover.files.yaml.YamlProblem;

/** What may be wrong with a site file can be said. */
class SiteProblemWordingTest {

    @ParameterizedTest
    @EnumSource(ProblemKind.class)
    void everyProblemOfASiteFileHasASentenceThatFillsItsPlaces(ProblemKind kind) throws IOException {
        assertFills(kind.key(), kind.arity());
    }

    @ParameterizedTest
    @EnumSource(YamlProblem.Kind.class)
    void everyProblemOfATextHasASentenceThatFillsItsPlaces(YamlProblem.Kind kind) throws IOException {
        assertFills(InputProblem.key(kind), kind.arity());
    }

    private static void assertFills(String key, int arity) throws IOException {
        Properties sentences = new Properties();
        try (Reader reader = Files.newBufferedReader(
                ProjectFiles.ROOT.resolve("papers/src/main/resources/tideover/papers/problems.properties"))) {
            sentences.load(reader);
        }
        String sentence = sentences.getProperty(key);
        assertThat(sentence).as(key).isNotNull();
        List<String> filled = new ArrayList<>();
        IntStream.range(0, arity).forEach(place -> filled.add("<" + place + ">"));
        // Every place is printed, and none is left over: an apostrophe not doubled would swallow some.
        assertThat(new MessageFormat(sentence).format(filled.toArray()))
                .satisfies(text -> assertThat(filled).allMatch(text::contains))
                .doesNotContain("{");
    }
}
