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
import tideover.files.cells.CellProblem;

/** What may be wrong with what was typed can be said. */
class CellProblemWordingTest {

    @ParameterizedTest
    @EnumSource(CellProblem.class)
    void everyProblemOfACellHasASentenceThatFillsItsPlaces(CellProblem problem) throws IOException {
        Properties sentences = new Properties();
        try (Reader reader = Files.newBufferedReader(
                ProjectFiles.ROOT.resolve("papers/src/main/resources/tideover/papers/cells.properties"))) {
            sentences.load(reader);
        }
        String sentence = sentences.getProperty(problem.key());
        assertThat(sentence).as(problem.key()).isNotNull();
        List<String> filled = new ArrayList<>();
        IntStream.range(0, problem.arity()).forEach(place -> filled.add("<" + place + ">"));
        assertThat(new MessageFormat(sentence).format(filled.toArray()))
                .satisfies(text -> assertThat(filled).allMatch(text::contains))
                .doesNotContain("{");
    }
}
