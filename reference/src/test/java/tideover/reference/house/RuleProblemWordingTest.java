package tideover.reference.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.text.MessageFormat;
import java.util.Properties;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.files.rules.RuleProblem;

/** What may be wrong with a rule book can be said. */
class RuleProblemWordingTest {

    @ParameterizedTest
    @EnumSource(RuleProblem.class)
    void everyProblemOfARuleBookHasASentenceThatFillsItsPlaces(RuleProblem problem) throws IOException {
        Properties sentences = new Properties();
        try (Reader reader = Files.newBufferedReader(
                ProjectFiles.ROOT.resolve("papers/src/main/resources/tideover/papers/problems.properties"))) {
            sentences.load(reader);
        }
        String sentence = sentences.getProperty(problem.key());
        assertThat(sentence).as(problem.key()).isNotNull();
        assertThat(new MessageFormat(sentence).getFormatsByArgumentIndex())
                .as(sentence)
                .hasSize(problem.arity());
    }
}
