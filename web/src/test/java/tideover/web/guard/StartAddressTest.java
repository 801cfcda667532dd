package tideover.web.guard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import tideover.web.trial.Desk;
import tideover.web.trial.Visitor;

class StartAddressTest {
    private static Desk desk;
    private static String site;

    @BeforeAll
    static void open() {
        desk = Desk.open();
        site = desk.importExample("town-house.yaml");
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    private static HttpResponse<String> follow(Visitor visitor, String address) {
        return visitor.send(HttpRequest.newBuilder(URI.create(address)).GET());
    }

    @Test
    void aTokenLetsInOnce() {
        String address = desk.startAddress();
        Visitor first = desk.stranger();
        assertThat(follow(first, address).statusCode()).isEqualTo(303);
        assertThat(first.read("/").statusCode()).isEqualTo(200);
        Visitor second = desk.stranger();
        assertThat(follow(second, address).statusCode()).isEqualTo(401);
        assertThat(second.read("/").statusCode()).isEqualTo(401);
    }

    @Test
    void noOtherTokenLetsIn() {
        String address = desk.startAddress();
        Visitor visitor = desk.stranger();
        for (String wrong : List.of("", "x", address.substring(address.length() - 43, address.length() - 1)))
            assertThat(follow(visitor, desk.at("/enter?token=" + wrong)).statusCode())
                    .isEqualTo(401);
        assertThat(follow(visitor, address).statusCode())
                .as("the right one still does")
                .isEqualTo(303);
    }

    @Test
    void theAddressCannotSendPeopleElsewhere() {
        HttpResponse<String> entered = follow(desk.stranger(), desk.startAddress() + "&to=http://evil.example/");
        assertThat(entered.headers().firstValue("Location")).hasValue("/");
    }

    @Test
    void theCookieIsForTheBrowserAloneAndNeverInAnAddress() {
        HttpResponse<String> entered = follow(desk.stranger(), desk.startAddress());
        String cookie = entered.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie).contains("HttpOnly", "SameSite=Strict", "Path=/");
        String value = cookie.substring(cookie.indexOf('=') + 1, cookie.indexOf(';'));
        Visitor visitor = desk.visitor();
        assertThat(entered.headers().firstValue("Location").orElseThrow()).doesNotContain(value);
        assertThat(visitor.read("/").body()).doesNotContain("jsessionid", ";tideover-");
        String name = cookie.substring(0, cookie.indexOf('='));
        assertThat(follow(desk.stranger(), desk.at("/;" + name + "=" + value)).statusCode())
                .as("an address never stands for the cookie")
                .isIn(400, 401);
    }

    @Test
    void aSessionFromBeforeIsNotTheOneThatIsLetIn() {
        Visitor visitor = desk.visitor();
        String before = follow(visitor, desk.startAddress())
                .headers()
                .firstValue("Set-Cookie")
                .orElse("");
        assertThat(before).as("a new name for the session at each entrance").isNotEmpty();
    }

    @Test
    void whatIsKeptIsItsOwnersAlone() throws IOException {
        Assumptions.assumeTrue(
                FileSystems.getDefault().supportedFileAttributeViews().contains("posix"));
        desk.visitor().read("/");
        try (Stream<Path> all = Files.walk(desk.folder())) {
            List<Path> paths = all.toList();
            assertThat(paths).hasSizeGreaterThan(3);
            for (Path path : paths)
                assertThat(Files.getPosixFilePermissions(path))
                        .as(path.toString())
                        .isSubsetOf(Set.of(
                                PosixFilePermission.OWNER_READ,
                                PosixFilePermission.OWNER_WRITE,
                                PosixFilePermission.OWNER_EXECUTE));
        }
    }

    @Test
    void theLogNamesRoutesAndNeverWhatPeopleWrote() throws IOException {
        Visitor visitor = desk.visitor();
        visitor.read("/?q=Secretname");
        assertThat(visitor.post(site + "/customers", "name", "Secretname").statusCode())
                .isEqualTo(303);
        String log = Files.readString(desk.folder().resolve("tideover.log"));
        assertThat(log)
                .contains("\"route\":\"/sites/{variant}/customers\"")
                .doesNotContain("Secretname", desk.key())
                .doesNotContain(
                        desk.startAddress().substring(desk.startAddress().indexOf("token=")));
        for (String line : log.lines().toList())
            assertThat(line).startsWith("{\"").endsWith("}");
    }
}
