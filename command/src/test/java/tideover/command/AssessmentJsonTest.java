package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** The form docs/findings-json.md describes. */
class AssessmentJsonTest {

    private static String json(String example, String... more) {
        StringWriter out = new StringWriter();
        List<String> arguments = new ArrayList<>(
                List.of("check", Path.of("..", "examples", example).toString(), "--json"));
        arguments.addAll(List.of(more));
        new Tideover(new PrintWriter(out, true), new PrintWriter(new StringWriter()), () -> LocalDate.EPOCH)
                .run(arguments.toArray(String[]::new));
        return out.toString();
    }

    /** Names of the fields at one depth, in order, each once. */
    private static List<String> names(String json, int depth) {
        List<String> names = new ArrayList<>();
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), json)) {
            int at = 0;
            for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
                if (token.isStructStart()) at++;
                if (token.isStructEnd()) at--;
                String name = parser.currentName();
                if (token == JsonToken.PROPERTY_NAME && at == depth && !names.contains(name)) names.add(name);
            }
        }
        return names;
    }

    @Test
    void theObjectHasTheFieldsPromised() {
        assertThat(names(json("town-house.yaml"), 1))
                .containsExactly("format", "program", "site", "rules", "ruleBooks", "verdict", "counts", "findings");
    }

    @Test
    void aFindingHasTheFieldsPromised() {
        assertThat(names(json("troubled/three-poles.yaml"), 3))
                .containsExactly(
                        "check",
                        "place",
                        "placeName",
                        "state",
                        "outcome",
                        "force",
                        "value",
                        "limit",
                        "unit",
                        "clause",
                        "source",
                        "verification",
                        "facts",
                        "assumptions",
                        "missing",
                        "sentence",
                        "accepted");
    }

    @Test
    void calculationsComeOnRequest() {
        assertThat(names(json("terrace.yaml", "--calculation"), 3)).contains("calculation");
    }

    @Test
    void theVerdictIsAWord() {
        assertThat(json("town-house.yaml")).contains("\"verdict\" : \"MET\"");
        assertThat(json("troubled/three-poles.yaml")).contains("\"verdict\" : \"NOT_MET\"");
    }

    @Test
    void whatNeverComesIsNull() {
        assertThat(json("troubled/nothing-clears-in-island.yaml"))
                .doesNotContain("Infinity")
                .contains("\"value\" : null");
    }

    @Test
    void theSameSiteGivesTheSameText() {
        assertThat(json("farmhouse.yaml")).isEqualTo(json("farmhouse.yaml"));
    }
}
