package tideover.reference.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.text.MessageFormat;
import java.util.List;
import java.util.Properties;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.store.attachment.AttachmentProblem;
import tideover.store.database.StoreRefusal;

/** What keeps the store from working can be said. */
class StoreRefusalWordingTest {

    @ParameterizedTest
    @EnumSource(StoreRefusal.Reason.class)
    void everyRefusalOfTheStoreHasASentenceThatFillsItsPlaces(StoreRefusal.Reason reason) throws IOException {
        assertFills(reason.key(), reason.arity());
    }

    @ParameterizedTest
    @EnumSource(AttachmentProblem.class)
    void everythingThatKeepsAFileFromBeingAttachedHasASentence(AttachmentProblem problem) throws IOException {
        assertFills(problem.key(), problem.arity());
    }

    private static void assertFills(String key, int arity) throws IOException {
        Properties sentences = new Properties();
        try (Reader reader = Files.newBufferedReader(
                ProjectFiles.ROOT.resolve("papers/src/main/resources/tideover/papers/store.properties"))) {
            sentences.load(reader);
        }
        String sentence = sentences.getProperty(key);
        assertThat(sentence).as(key).isNotNull();
        List<String> filled =
                IntStream.range(0, arity).mapToObj(place -> "<" + place + ">").toList();
        assertThat(new MessageFormat(sentence).format(filled.toArray()))
                .contains(filled)
                .doesNotContain("{");
    }
}
