package tideover.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.engine.assessment.Assessment;
import tideover.engine.assessment.Assessor;
import tideover.engine.rules.Limit;
import tideover.files.rules.RuleBookResult.Readable;
import tideover.files.rules.RuleBooks;
import tideover.store.Store;
import tideover.store.site.SiteRow;
import tideover.store.site.SiteSearch;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Rule books of the user's own in the workbench. */
@Tag("slow")
class ServeRulesTest {
    private static final String LIMIT = "voltage.dropOtherRatio";
    private static final String BOOK = """
            book: MY
            over: DE
            name: Our own conditions
            limits:
              - limit: voltage.dropOtherRatio
                value: 0.004
                force: REQUIRED
                source: Conditions of our company
                clause: page 3
                verification: OWN_CHOICE
            """;

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final ServeCommand command = new ServeCommand(new PrintWriter(out, true), new PrintWriter(err, true));

    private int demo(Path rules) {
        Main.quietLibraries();
        return Main.run(
                command,
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                "demo",
                "--port",
                "0",
                "--data",
                folder.resolve("data").toString(),
                "--examples",
                Path.of("..", "examples").toString(),
                "--rules",
                rules.toString());
    }

    @Test
    void sitesOfACountryAreJudgedByOnesOwnBookOverIt() throws IOException {
        Path rules = Files.writeString(folder.resolve("own.yaml"), BOOK);
        assertThat(demo(rules)).as(err.toString()).isEqualTo(Serving.RUNNING);
        try (Serving serving = Objects.requireNonNull(command.serving())) {
            Work german = open(serving, "Amselweg 11");
            Assessment whole = serving.part(Assessor.class)
                    .assessAtOnce(german.site(), ((Readable) RuleBooks.read("DE", List.of(rules))).rules());
            assertThat(german.atOnce().findings()).isEqualTo(whole.findings());
            assertThat(german.atOnce().findings())
                    .anySatisfy(finding -> assertThat(finding.source()).hasToString(source(german)));
            assertThat(limit(german).requireNumber()).isEqualTo(0.004);
            assertThat(limit(open(serving, "8 Weaver Row")).requireNumber()).isEqualTo(0.05);
        }
    }

    @Test
    void aBookThatCannotBeReadIsToldWithItsLineAndNothingIsOpened() throws IOException {
        Path rules = Files.writeString(folder.resolve("own.yaml"), BOOK.replace("dropOtherRatio", "dropOtherRatios"));
        assertThat(demo(rules)).isEqualTo(2);
        assertThat(err.toString()).contains("own.yaml, line 5", LIMIT).doesNotContain("Exception");
        assertThat(out.toString()).isEmpty();
        assertThat(folder.resolve("data")).doesNotExist();
    }

    private static Work open(Serving serving, String designation) {
        SiteRow row = serving.part(Store.class).sites().list(new SiteSearch("", SiteSearch.Shelf.IN_WORK, 100)).stream()
                .filter(site -> site.latest().designation().equals(designation))
                .findFirst()
                .orElseThrow();
        return serving.part(Works.class).open(row.latest().id().text());
    }

    private static Limit limit(Work work) {
        return work.atOnce().rules().find(LIMIT).orElseThrow();
    }

    private static String source(Work work) {
        return limit(work).source().toString();
    }
}
