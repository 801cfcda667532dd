package tideover.web.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tideover.web.trial.Desk;
import tideover.web.trial.Visitor;

@Tag("slow")
class TurnsTest {
    private static final List<String> PAGES = List.of(
            "/findings?show=met",
            "/diagram",
            "/network",
            "/network/oven",
            "/circuits",
            "/findings/loading.line/inverter");

    /** What each answer has of its own, and what still arrives. */
    private static final Pattern OWN = Pattern.compile(
            "(name=\"_csrf\" value|data-form-token)=\"[^\"]*\"|(?s)<p class=\"td-margin__pending\".*?</p>");

    @Test
    void manyWindowsOnOneSiteSeeTheSame() throws Exception {
        try (Desk desk = Desk.open()) {
            String site = desk.importExample("town-house.yaml");
            // All findings are there before: only then do all answers say the same.
            Visitor first = desk.visitor();
            while (first.read(site + "/findings").body().contains("td-margin__pending")) Thread.sleep(50);
            Map<String, String> seen = new ConcurrentHashMap<>();
            ExecutorService windows = Executors.newFixedThreadPool(6);
            List<Future<?>> all = new ArrayList<>();
            for (int window = 0; window < 6; window++) {
                int from = window;
                all.add(windows.submit(() -> {
                    Visitor visitor = desk.visitor();
                    for (int i = 0; i < PAGES.size(); i++) {
                        String path = PAGES.get((from + i) % PAGES.size());
                        HttpResponse<String> answer = visitor.read(site + path);
                        assertThat(answer.statusCode()).as(path).isEqualTo(200);
                        String text = OWN.matcher(answer.body()).replaceAll("");
                        String other = seen.putIfAbsent(path, text);
                        if (other != null) assertThat(text).as(path).isEqualTo(other);
                    }
                    return null;
                }));
            }
            for (Future<?> window : all) window.get();
            windows.shutdown();
            assertThat(seen).hasSize(PAGES.size());
        }
    }
}
