package tideover.files.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.rules.Force;
import tideover.engine.rules.Limit;
import tideover.engine.rules.RuleBook;
import tideover.engine.rules.Stance;
import tideover.engine.rules.Topic;
import tideover.files.InputProblem;

/** Rule books of an operator or a user over that of a country. All of them are invented. */
class UserRuleBookTest {

    private static final String SOUND = """
            book: valley-grid
            over: AT
            name: Conditions of an invented grid operator
            limits:
              - limit: poles.neutral.TT
                value: MUST
                force: OPERATOR
                source: letter of the operator
                clause: point 3
                verification: SEEN
                note: four poles
              - limit: link.electrodeLargestOhm
                value: 30
                force: OPERATOR
                source: letter of the operator
                clause: point 4
                verification: SEEN
            """;

    @TempDir
    Path folder;

    @Test
    void anOperatorsConditionsWinOverTheCountry() throws IOException {
        RuleBook rules = readable("AT", SOUND);
        assertThat(rules.layers()).containsExactly("IEC", "AT", "valley-grid");
        assertThat(rules.find("poles.neutral.TT"))
                .get()
                .extracting(Limit::choice, Limit::force, Limit::book, Limit::note)
                .containsExactly("MUST", Force.OPERATOR, "valley-grid", "four poles");
        assertThat(rules.find("poles.neutral.TN_S"))
                .get()
                .extracting(Limit::book)
                .isEqualTo("AT");
    }

    @Test
    void aTopicTheOperatorAnswersIsCoveredThenAndOthersAreNot() throws IOException {
        RuleBook rules = readable("AT", SOUND);
        assertThat(rules.find("link.electrodeLargestOhm"))
                .get()
                .extracting(Limit::number)
                .isEqualTo(30.0);
        assertThat(rules.stance(Topic.NEUTRAL_EARTH_LINK)).isEqualTo(Stance.OWN);
        assertThat(rules.find("link.count")).isEmpty();
        assertThat(rules.stance(Topic.RCD)).isEqualTo(Stance.UNKNOWN);
    }

    @Test
    void aUserMayTakeATopicFromIecByDeclaringIt() throws IOException {
        RuleBook rules = readable("NO", "book: mine\nover: NO\nname: My own\ntopics: {RCD: AS_IEC}\n");
        assertThat(rules.find("rcd.touchVoltageV"))
                .get()
                .extracting(Limit::book)
                .isEqualTo("IEC");
        assertThat(rules.find("fault.voltageFactor")).isEmpty();
    }

    @Test
    void twoBooksMayLieOverOneAnotherAndTheLastWins() throws IOException {
        Path operator = write("operator.yaml", SOUND);
        Path user = write(
                "user.yaml",
                SOUND.replace("book: valley-grid", "book: mine")
                        .replace("over: AT", "over: valley-grid")
                        .replace("value: 30", "value: 20"));
        RuleBookResult result = RuleBooks.read("AT", List.of(operator, user));
        assertThat(result)
                .isInstanceOfSatisfying(
                        RuleBookResult.Readable.class,
                        readable -> assertThat(readable.rules().find("link.electrodeLargestOhm"))
                                .get()
                                .extracting(Limit::number)
                                .isEqualTo(20.0));
    }

    @Test
    void oneChangedFigureChangesTheDigest() throws IOException {
        assertThat(readable("AT", SOUND).digest())
                .isNotEqualTo(
                        readable("AT", SOUND.replace("value: 30", "value: 31")).digest());
    }

    @ParameterizedTest(name = "{0} -> {1}: {4}")
    @CsvSource(
            delimiter = '|',
            value = {
                "limit: poles.neutral.TT     | limit: poles.neutral.TTT     | 5  | 12 | LIMIT_UNKNOWN_NEAR   | limits[0].limit",
                "limit: poles.neutral.TT     | limit: weather               | 5  | 12 | LIMIT_UNKNOWN        | limits[0].limit",
                "value: MUST                 | value: MSUT                  | 6  | 12 | WORD_UNKNOWN_NEAR    | limits[0].value",
                "value: MUST                 | value: certainly             | 6  | 12 | WORD_UNKNOWN         | limits[0].value",
                "value: 30                   | value: thirty                | 13 | 12 | NUMBER_FORM          | limits[1].value",
                "value: 30                   | value: -30                   | 13 | 12 | NUMBER_FORM          | limits[1].value",
                "value: 30                   | value: NaN                   | 13 | 12 | NUMBER_FORM          | limits[1].value",
                "force: OPERATOR             | force: operator              | 7  | 12 | WORD_UNKNOWN_NEAR    | limits[0].force",
                "verification: SEEN          | verification: SEEM           | 10 | 19 | WORD_UNKNOWN_NEAR    | limits[0].verification",
                "note: four poles            | remark: four poles           | 11 | 5  | KEY_UNKNOWN          | limits[0].remark",
                "note: four poles            | note: [four, poles]          | 11 | 11 | TEXT_FORM            | limits[0].note",
                "limit: link.electrodeLargestOhm | limit: poles.neutral.TT  | 12 | 12 | LIMIT_TWICE          | limits[1].limit",
                "book: valley-grid           | bock: valley-grid            | 1  | 1  | KEY_UNKNOWN_NEAR     | bock",
                "over: AT                    | over: DE                     | 0  | 0  | OVER_OTHER           | over",
            })
    void whatIsWrongIsNamedWithItsPlace(String from, String to, int line, int column, RuleProblem problem, String field)
            throws IOException {
        String text = SOUND.replaceFirst(Pattern.quote(from), to);
        assertThat(text).isNotEqualTo(SOUND);
        assertThat(problems("AT", text)).anySatisfy(found -> {
            assertThat(found.phrase().key()).isEqualTo(problem.key());
            assertThat(found.line()).isEqualTo(line);
            assertThat(found.column()).isEqualTo(column);
            assertThat(found.field()).isEqualTo(field);
            assertThat(found.phrase().arguments()).hasSize(problem.arity());
        });
    }

    @ParameterizedTest(name = "without {0}")
    @CsvSource({
        "book: valley-grid",
        "over: AT",
        "value: MUST",
        "force: OPERATOR",
        "source: letter of the operator",
        "verification: SEEN"
    })
    void whatIsMissingIsNamed(String line) throws IOException {
        String text = SOUND.replaceFirst(" *(- )?" + Pattern.quote(line) + "\n", "");
        assertThat(problems("AT", text))
                .extracting(found -> found.phrase().key())
                .containsExactly(RuleProblem.KEY_MISSING.key());
    }

    @Test
    void allThatIsWrongIsToldAtOnce() throws IOException {
        String text = SOUND.replace("value: MUST", "value: PERHAPS")
                .replace("value: 30", "value: much")
                .replace("force: OPERATOR", "force: STRONG");
        assertThat(problems("AT", text)).hasSize(4);
    }

    @Test
    void aLimitOfATopicTheBookSaysItKnowsNothingOfIsRefused() throws IOException {
        assertThat(problems("AT", SOUND + "topics: {POLES: UNKNOWN}\n"))
                .extracting(found -> found.phrase().key())
                .containsExactly(RuleProblem.LIMIT_UNCOVERED.key());
    }

    @ParameterizedTest
    @CsvSource({"'just a text'", "'limits: 3'", "'topics: [POLES]'", "'limits: [3]'", "'a: [1'", "''"})
    void whatIsNoRuleBookAtAllIsRefusedWithAPlace(String text) throws IOException {
        assertThat(problems("AT", text)).isNotEmpty();
    }

    @Test
    void aMissingFileIsAProblemOfThatFile() {
        assertThat(refused(RuleBooks.read("AT", List.of(folder.resolve("none.yaml")))))
                .extracting(found -> found.phrase().key())
                .containsExactly(RuleProblem.FILE_UNREADABLE.key());
    }

    private RuleBook readable(String country, String text) throws IOException {
        RuleBookResult result = RuleBooks.read(country, List.of(write("rules.yaml", text)));
        assertThat(result).isInstanceOf(RuleBookResult.Readable.class);
        return ((RuleBookResult.Readable) result).rules();
    }

    private List<InputProblem> problems(String country, String text) throws IOException {
        return refused(RuleBooks.read(country, List.of(write("rules.yaml", text))));
    }

    private static List<InputProblem> refused(RuleBookResult result) {
        assertThat(result).isInstanceOf(RuleBookResult.Refused.class);
        return ((RuleBookResult.Refused) result).problems();
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
