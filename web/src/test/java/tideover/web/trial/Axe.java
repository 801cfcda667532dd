package tideover.web.trial;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Looks for what keeps people out who see, hear or point otherwise: WCAG 2.2 A and AA, as far as a program can tell. */
public final class Axe {
    private static final String SCRIPT = script();
    private static final String RUN = """
            async () => (await axe.run(document, {
              runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
              resultTypes: ['violations'],
            })).violations
              .filter(found => found.impact === 'serious' || found.impact === 'critical')
              .map(found => {
                const node = found.nodes[0];
                const checks = node.any.concat(node.all, node.none).map(check => check.message).join('; ');
                return `${found.id} (${found.impact}), ${found.nodes.length} times, first at ${node.target.join(' ')}: ${node.html} ${checks}`;
              })
            """;

    private Axe() {}

    /** What is serious or critical on a page as it stands now: each rule once, with the first place that breaks it. */
    public static List<String> serious(Page page) {
        // Past the page's own policy: the browser runs it as from its console.
        page.evaluate(SCRIPT);
        return ((List<?>) page.evaluate(RUN)).stream().map(String::valueOf).toList();
    }

    private static String script() {
        // The library's own Java part would bring a second JSON stack; only its script is used.
        try (InputStream script = Objects.requireNonNull(Axe.class.getResourceAsStream("/axe.min.js"))) {
            return new String(script.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
