package tideover.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.store.site.SiteSearch;
import tideover.store.site.VariantId;
import tideover.web.guard.Routes.Route;
import tideover.web.trial.Desk;
import tideover.web.trial.RawHttp;
import tideover.web.trial.RawHttp.Reply;

/** Nobody gets past the guard on any route that there is. */
class EveryRouteTest {
    /** All that may be asked without being let in; the first lets in, the second tells that the workbench answers. */
    private static final Set<String> OPEN = Set.of("GET /enter", "GET /health", "GET /assets/drawing.css");

    private static Desk desk;
    private static String site;
    private static String cookie;
    private static List<Route> routes;

    @BeforeAll
    static void open() {
        desk = Desk.open();
        site = desk.importExample("town-house.yaml");
        routes = Routes.of(desk, site);
        String entered = RawHttp.send(
                        desk.port(),
                        "",
                        "GET " + desk.startAddress().substring(desk.origin().length()) + " HTTP/1.1",
                        "Host: 127.0.0.1:" + desk.port())
                .header("Set-Cookie");
        cookie = entered.substring(0, entered.indexOf(';'));
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @AfterEach
    void nothingWasChanged() {
        VariantId variant = new VariantId(site.substring(site.lastIndexOf('/') + 1));
        assertThat(desk.store().sites().revisions(variant)).hasSize(1);
        assertThat(desk.store().sites().list(SiteSearch.of(""))).hasSize(1);
        assertThat(desk.store().customers().list("")).isEmpty();
    }

    private static Reply ask(Route route, String... headers) {
        List<String> lines = new ArrayList<>(List.of(route.method() + " " + route.path() + " HTTP/1.1"));
        lines.addAll(List.of(headers));
        if (lines.stream().noneMatch(line -> line.startsWith("Host:"))) lines.add(1, "Host: 127.0.0.1:" + desk.port());
        if (!route.isReading()) lines.add("Content-Type: application/x-www-form-urlencoded");
        return RawHttp.send(desk.port(), route.isReading() ? "" : "base=1", lines.toArray(String[]::new));
    }

    /** Asks every route and tells which did not answer so. */
    private static void assertAllAnswer(Set<Integer> statuses, Set<String> open, String... headers) {
        Set<String> others = new TreeSet<>();
        for (Route route : routes) {
            Reply reply = ask(route, headers);
            boolean listed = open.contains(route.toString());
            if (statuses.contains(reply.status()) == listed) others.add(route + " answered " + reply.status());
            if (listed) continue;
            if (route.path().startsWith("/api/"))
                assertThat(reply.body()).as(route.toString()).startsWith("{\"problems\":");
            else assertThat(reply.body()).as(route.toString()).contains("<h1>").doesNotContain("Amselweg");
        }
        assertThat(others).isEmpty();
    }

    @Test
    void thereAreRoutesAtAll() {
        assertThat(routes).hasSizeGreaterThan(50);
    }

    @Test
    void strangersAreToldTheDoorIsClosed() {
        Set<String> open = new TreeSet<>(OPEN);
        // Tells the same page, as it was asked without a token.
        open.remove("GET /enter");
        assertAllAnswer(Set.of(401), open);
    }

    @Test
    void strangersGetNoSession() {
        for (Route route : routes)
            assertThat(ask(route).header("Set-Cookie")).as(route.toString()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/",
                "/sites/0123456789abcdef",
                "/nowhere",
                "/api/nowhere",
                "/error",
                "/actuator",
                "/..%2f",
                "/assets/../sites/new"
            })
    void strangersLearnNothingOfWhatIsThereAndWhatIsNot(String path) {
        Reply reply = RawHttp.send(desk.port(), "", "GET " + path + " HTTP/1.1", "Host: 127.0.0.1:" + desk.port());
        assertThat(reply.status()).isIn(400, 401);
    }

    @Test
    void aWrongKeyIsRefusedEvenWhereACookieWouldDo() {
        assertAllAnswer(Set.of(401), Set.of(), "Authorization: Bearer wrong", "Cookie: " + cookie);
    }

    @Test
    void anotherNameOfTheMachineIsRefused() {
        for (String host : List.of(
                "evil.example:" + desk.port(),
                "127.0.0.1.evil.example:" + desk.port(),
                "127.0.0.1",
                "localhost:1",
                "0.0.0.0:" + desk.port(),
                "tideover")) assertAllAnswer(Set.of(403, 401), Set.of(), "Host: " + host, "Cookie: " + cookie);
    }

    @Test
    void aForeignOriginIsRefused() {
        for (String origin : List.of(
                "http://evil.example",
                "http://127.0.0.1:1",
                "null",
                "https://127.0.0.1:" + desk.port(),
                "http://localhost:" + desk.port()))
            assertAllAnswer(Set.of(403), Set.of(), "Origin: " + origin, "Cookie: " + cookie);
    }

    @Test
    void whatAnotherSiteMakesTheBrowserSendIsRefused() {
        for (String from : List.of("cross-site", "same-site")) {
            assertAllAnswer(
                    Set.of(403), Set.of(), "Sec-Fetch-Site: " + from, "Sec-Fetch-Mode: no-cors", "Cookie: " + cookie);
            assertAllAnswer(
                    Set.of(403), Set.of(), "Sec-Fetch-Site: " + from, "Sec-Fetch-Mode: cors", "Cookie: " + cookie);
        }
    }

    @Test
    void aChangeNeedsTheFormTokenOfItsPage() {
        for (Route route : routes) {
            if (route.isReading()) continue;
            Reply reply = ask(route, "Cookie: " + cookie, "Origin: " + desk.origin());
            assertThat(reply.status()).as(route.toString()).isEqualTo(403);
            reply = ask(route, "Cookie: " + cookie, "Origin: " + desk.origin(), "X-CSRF-TOKEN: wrong");
            assertThat(reply.status()).as(route.toString()).isEqualTo(403);
        }
    }

    @Test
    void everyAnswerBearsTheHeadersThatProtectIt() {
        List<Reply> replies = new ArrayList<>();
        for (Route route : routes) {
            replies.add(ask(route));
            replies.add(ask(route, "Host: evil.example"));
            if (route.isReading() && !route.pattern().equals("/enter")) replies.add(ask(route, "Cookie: " + cookie));
        }
        Route sheet = new Route(org.springframework.web.bind.annotation.RequestMethod.GET, "", site + "/nowhere");
        replies.add(ask(sheet, "Cookie: " + cookie));
        replies.add(ask(new Route(sheet.method(), "", "/assets/base.css")));
        for (Reply reply : replies) {
            assertThat(reply.header("Content-Security-Policy"))
                    .contains(
                            "default-src 'none'",
                            "script-src 'self'",
                            "style-src 'self'",
                            "frame-ancestors 'none'",
                            "form-action 'self'",
                            "base-uri 'none'")
                    .doesNotContain("unsafe", "*");
            assertThat(reply.header("X-Content-Type-Options")).isEqualTo("nosniff");
            assertThat(reply.header("X-Frame-Options")).isEqualTo("DENY");
            assertThat(reply.header("Referrer-Policy")).isEqualTo("same-origin");
            assertThat(reply.header("Cross-Origin-Opener-Policy")).isEqualTo("same-origin");
            assertThat(reply.header("Cross-Origin-Resource-Policy")).isEqualTo("same-origin");
            assertThat(reply.header("Cache-Control")).containsAnyOf("no-store", "no-cache");
            assertThat(reply.header("Server")).isEmpty();
            assertThat(reply.header("X-Powered-By")).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "GET /%zz HTTP/1.1",
                "GET /a\u0001 HTTP/1.1",
                "TRACE / HTTP/1.1",
                "NONSENSE / HTTP/1.1",
                "GET http://evil.example/ HTTP/1.1",
                "GET /sites/;x=1 HTTP/1.1"
            })
    void nonsenseIsRefusedWithoutAWordAboutTheInside(String line) {
        Reply reply = RawHttp.send(desk.port(), "", line, "Host: 127.0.0.1:" + desk.port());
        assertThat(reply.status()).isBetween(400, 501);
        assertThat(reply.body()).doesNotContainIgnoringCase("tomcat").doesNotContain("Exception", "java.", "at org.");
    }
}
