package tideover.web.trial;

import com.microsoft.playwright.BrowserContext;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Notes what no page of ours may ever do: report an error, break its own policy, or ask anybody else. */
final class Watch {
    /** What the browser says about our own refusals, which are pages like any other. */
    private static final Pattern REFUSAL = Pattern.compile("Failed to load resource: .* status of (409|422) .*");

    private final Desk desk;
    private final List<String> troubles = new ArrayList<>();
    private final List<Pattern> expected = new ArrayList<>(List.of(REFUSAL));

    Watch(Desk desk) {
        this.desk = desk;
    }

    void over(BrowserContext context) {
        // A breach of the content policy is reported on the console as well.
        context.onConsoleMessage(message -> {
            if (message.type().equals("error"))
                note("console: " + message.text() + " on " + message.page().url());
        });
        context.onWebError(error -> note("script: " + error.error()));
        context.onRequest(request -> {
            String url = request.url();
            if (!url.startsWith(desk.at("/")) && !url.startsWith("data:") && !url.startsWith("blob:"))
                note("asked elsewhere: " + url);
        });
        context.onResponse(response -> {
            if (response.status() >= 500) note("our fault: %d of %s".formatted(response.status(), response.url()));
        });
    }

    private void note(String trouble) {
        troubles.add(trouble);
    }

    void expect(String pattern) {
        expected.add(Pattern.compile(pattern));
    }

    List<String> unexpected() {
        return troubles.stream()
                .filter(trouble -> expected.stream()
                        .noneMatch(pattern -> pattern.matcher(trouble).find()))
                .toList();
    }
}
