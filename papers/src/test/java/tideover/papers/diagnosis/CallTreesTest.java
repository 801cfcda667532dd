package tideover.papers.diagnosis;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import tideover.engine.rules.Verification;
import tideover.papers.Wording;

/** The trees for what callers mostly have: whole, worded, each row with its source. */
class CallTreesTest {

    private static final CallTrees TREES = CallTrees.load();

    private static List<String[]> rows() throws IOException {
        try (InputStream bytes = CallTrees.class.getResourceAsStream("calls.csv")) {
            assertThat(bytes).isNotNull();
            return new String(bytes.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(",", -1))
                    .toList();
        }
    }

    private static Properties texts() throws IOException {
        Properties texts = new Properties();
        try (InputStream bytes = Wording.class.getResourceAsStream("calls.properties")) {
            texts.load(bytes);
        }
        return texts;
    }

    private static void walk(@Nullable CallNode node, Set<String> met) {
        if (node == null) return;
        assertThat((node.yes() == null) == (node.no() == null)).as(node.id()).isTrue();
        met.add(node.id());
        walk(node.yes(), met);
        walk(node.no(), met);
    }

    @Test
    void everyTreeEndsInWhatToDoAndLeavesNoRowOut() throws IOException {
        Set<String> met = new HashSet<>();
        for (String trouble : TREES.troubles()) walk(TREES.find(trouble).orElseThrow(), met);
        assertThat(met)
                .containsExactlyInAnyOrderElementsOf(
                        rows().stream().map(row -> row[0]).toList());
        assertThat(TREES.troubles()).contains("overload", "rcd", "battery", "bus");
    }

    @Test
    void questionsAreAskedAndAdviceIsGiven() throws IOException {
        Properties texts = texts();
        for (String[] row : rows()) {
            String text = texts.getProperty("call." + row[0]);
            assertThat(text).as(row[0]).isNotBlank();
            if (row[1].isEmpty()) assertThat(text).as(row[0]).endsWith(".");
            else assertThat(text).as(row[0]).endsWith("?");
        }
        for (String trouble : TREES.troubles())
            assertThat(texts.getProperty("call." + trouble + ".title")).isNotBlank();
    }

    @Test
    void everyRowNamesItsSourceAndHowFarItWasCompared() throws IOException {
        for (String[] row : rows()) {
            assertThat(row[5]).as(row[0]).isNotBlank();
            assertThat(Verification.valueOf(row[6])).as(row[0]).isNotNull();
        }
    }
}
