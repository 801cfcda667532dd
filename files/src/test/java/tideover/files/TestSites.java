package tideover.files;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.Site;

/** The cottage of the tests, the examples, and short forms of what reading them gives. */
final class TestSites {
    static final FieldTable TABLE = FieldTable.load();
    static final SiteFiles FILES = new SiteFiles(TABLE);

    private TestSites() {}

    static String cottage() {
        try (InputStream in = TestSites.class.getResourceAsStream("cottage.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The cottage with one piece of text, which must be in it once, replaced by another. */
    static String cottageWith(String old, String replacement) {
        String text = cottage();
        int at = text.indexOf(old);
        if (at < 0 || text.indexOf(old, at + 1) >= 0)
            throw new IllegalArgumentException("'%s' is not in the cottage once".formatted(old));
        return text.substring(0, at) + replacement + text.substring(at + old.length());
    }

    static Site site(String text) {
        SiteFileResult result = FILES.read("test.yaml", text.getBytes(StandardCharsets.UTF_8));
        if (result instanceof SiteFileResult.Readable readable) return readable.site();
        throw new AssertionError("refused: " + problems(result));
    }

    static List<String> problems(String text) {
        return problems(FILES.read("test.yaml", text.getBytes(StandardCharsets.UTF_8)));
    }

    /** Each as {@code line:column field key arguments}. */
    static List<String> problems(SiteFileResult result) {
        if (result instanceof SiteFileResult.Refused refused)
            return refused.problems().stream().map(TestSites::text).toList();
        return List.of();
    }

    static String text(InputProblem problem) {
        StringBuilder text = new StringBuilder("%d:%d %s %s"
                .formatted(
                        problem.line(),
                        problem.column(),
                        problem.field().isEmpty() ? "-" : problem.field(),
                        problem.phrase().key().substring(ProblemKind.PREFIX.length())));
        for (PhraseArg argument : problem.phrase().arguments())
            text.append(" | ").append(((PhraseArg.Verbatim) argument).text());
        return text.toString();
    }

    /** Every example, variants too. */
    static List<Path> examples() {
        try (Stream<Path> files = Files.walk(Path.of("../examples"))) {
            List<Path> examples = files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
            if (examples.isEmpty()) throw new AssertionError("there are no examples");
            return examples;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
