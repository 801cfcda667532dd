package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The first visit and the survey on the command line, without anything kept. */
class BeginCommandTest {
    private static final List<String> ANSWERS = List.of(
            "--designation=Amselweg 3",
            "--country=de",
            "--earthing=tn-c-s",
            "--lines=3",
            "--main-fuse=35 A",
            "--pv=9,8",
            "--battery=unknown",
            "--inverter=10",
            "--loads=usual,well-pump",
            "--stay-on=usual,oven");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(Object... arguments) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return new Tideover(new PrintWriter(out, true), new PrintWriter(err, true), () -> LocalDate.EPOCH)
                .run(Arrays.stream(arguments).map(String::valueOf).toArray(String[]::new));
    }

    private int begin(List<String> answers, Object... more) {
        List<Object> all = new ArrayList<>(List.of("begin"));
        all.addAll(answers);
        all.addAll(Arrays.asList(more));
        return run(all.toArray());
    }

    private Path begun() {
        Path file = folder.resolve("amselweg.yaml");
        assertThat(begin(ANSWERS, "-o", file)).as(err.toString()).isZero();
        return file;
    }

    @Test
    void fiveAnswersMakeASiteFileWhoseAssumedFactsAreMarked() throws IOException {
        Path file = begun();
        assertThat(out.toString()).contains(file.toString(), "tideover survey " + file);
        String site = Files.readString(file);
        assertThat(site)
                .contains(
                        "Amselweg 3", "country: DE", "earthingSystem: TN_C_S", "ratedCurrentA: 35", "peakPowerW: 9800")
                .contains("{about: supply.earthingSystem, origin: DECLARED_BY_CUSTOMER}")
                .contains("{about: islanding-switch.poles, origin: ASSUMED}")
                .doesNotContain("usableEnergyWh");
        assertThat(run("check", file))
                .as("judged at once, open on what is assumed")
                .isEqualTo(1);
        assertThat(out.toString()).startsWith("Amselweg 3").contains("Open");
    }

    @Test
    void withoutAFileTheSiteFileIsPrintedAndNothingElse() throws IOException {
        String written = Files.readString(begun());
        assertThat(begin(ANSWERS)).isZero();
        assertThat(out.toString()).isEqualTo(written);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void whatIsNotAnsweredIsAskedForInOneMessageInTheOrderOfTheQuestions() {
        assertThat(run("begin")).isEqualTo(2);
        assertThat(err.toString())
                .containsSubsequence(
                        "missing",
                        "--designation:",
                        "--country: two letters",
                        "AT, AU, DE, GB",
                        "--earthing:",
                        "TN-S, TN-C-S, TN-C, TT, IT or unknown",
                        "--lines:",
                        "--main-fuse:",
                        "--pv:",
                        "--battery:",
                        "--inverter:",
                        "--loads:",
                        "kitchen-sockets",
                        "--stay-on:")
                .doesNotContain("--said-by", "Exception");
        assertThat(out.toString()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "--country, Germany, two letters",
        "--earthing, TN-X, 'TN-S, TN-C-S'",
        "--lines, 2, '1, 3 or unknown'",
        "--main-fuse, 900000, outside of what houses have",
        "--inverter, 8 kW, 'Units it takes: VA, kVA'",
        "--loads, swimming-pool, any of lights",
        "--stay-on, everything, any of the loads",
        "--said-by, neighbour, customer",
        "--source, later, planned or there",
        "--forms, 2, as many as come in"
    })
    void anAnswerThatCannotBeIsToldWithWhatMayBeGivenAndNothingIsWritten(String option, String given, String mend) {
        Path file = folder.resolve("refused.yaml");
        List<String> answers = new ArrayList<>(ANSWERS);
        answers.removeIf(answer -> answer.startsWith(option + "="));
        answers.add(option + "=" + given);
        assertThat(begin(answers, "-o", file)).isEqualTo(2);
        assertThat(err.toString()).contains(option, given, mend).doesNotContain("Exception");
        assertThat(file).doesNotExist();
    }

    @Test
    void wrongAndMissingAnswersComeTogether() {
        assertThat(run("begin", "--earthing", "TN-X", "--lines", "3")).isEqualTo(2);
        assertThat(err.toString()).contains("TN-X", "--main-fuse:").doesNotContain("--lines:");
    }

    @Test
    void theSurveyAsksFirstWhatSetsThePrice() {
        assertThat(run("survey", begun())).isZero();
        assertThat(out.toString())
                .startsWith("Amselweg 3")
                .containsSubsequence(
                        "What sets the price",
                        "  1  The grid operator",
                        "one letter to the",
                        "grid-operator.neutralSeparation",
                        "supply.penSplitAt",
                        "main-board.spareWays",
                        " 20  ",
                        "What else findings wait for",
                        " 21  ")
                .doesNotContain("supply.earthingSystem", "supply.mainFuse.ratedCurrentA");
    }

    @Test
    void aFactNobodyVouchesForIsAskedForThoughItStandsInTheFile() throws IOException {
        Path file = begun();
        run("survey", file);
        assertThat(out.toString()).doesNotContain("supply.earthingSystem");
        String site = Files.readString(file);
        String said = "  - {about: supply.earthingSystem, origin: DECLARED_BY_CUSTOMER}\n";
        assertThat(site).contains(said);
        Files.writeString(file, site.replace(said, ""));
        assertThat(run("survey", file)).as(err.toString()).isZero();
        assertThat(out.toString()).contains("assumed: TN-C-S", "supply.earthingSystem");
    }

    @Test
    void programsReadTheSurveyAsJson() {
        assertThat(run("survey", begun(), "--json")).isZero();
        JsonValue facts = JsonValue.of(out.toString()).at("facts");
        assertThat(facts.items()).hasSizeGreaterThan(20);
        JsonValue first = facts.first();
        assertThat(first.at("path").text()).isEqualTo("grid-operator.neutralSeparation");
        assertThat(first.at("thing").text()).isEqualTo("grid-operator");
        assertThat(first.at("mark").text()).isEqualTo("MISSING");
        assertThat(first.at("source").text()).isEqualTo("ASK_OPERATOR");
        assertThat(first.at("findings").number()).isPositive();
        assertThat(first.at("first").value()).isEqualTo(true);
        assertThat(facts.items().get(20).at("first").value()).isEqualTo(false);
        JsonValue poles = facts.find("path", "islanding-switch.poles");
        assertThat(poles.at("mark").text()).isEqualTo("ASSUMED");
        assertThat(poles.at("value").text()).isEqualTo("4");
    }

    @Test
    void aMissingSiteFileIsToldAsEverywhere() {
        assertThat(run("survey", folder.resolve("nowhere.yaml"))).isEqualTo(2);
        assertThat(err.toString()).contains("nowhere.yaml").doesNotContain("Exception");
    }
}
