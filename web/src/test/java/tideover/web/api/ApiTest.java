package tideover.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.rules.Digest;
import tideover.files.FieldTable;
import tideover.store.Store;
import tideover.store.customer.CustomerFacts;
import tideover.store.site.VariantId;
import tideover.web.trial.Desk;
import tideover.web.trial.Program;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What programs ask and are answered, over real HTTP; every answer is held against the description. */
class ApiTest {
    private static final ApiDescription DESCRIPTION = new ApiDescription();
    private static final JsonMapper JSON = new JsonMapper();
    private static final String LENGTH = "bath-sockets.cable.lengthM";
    /** The smallest picture there is: one grey point. */
    private static final byte[] PICTURE = java.util.Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==");

    private static Desk desk;
    private static Program program;

    @BeforeAll
    static void open() {
        desk = Desk.open();
        program = desk.program();
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    private static String importTownHouse() {
        return desk.importExample("town-house.yaml").substring("/sites/".length());
    }

    /** Asks, holds the answer against the description, and gives it. */
    private static JsonNode ask(int status, String method, String path, @Nullable Object body, String... filled) {
        String address = path;
        for (int i = 0; i < filled.length; i += 2)
            address = address.contains("{" + filled[i] + "}")
                    ? address.replace("{" + filled[i] + "}", filled[i + 1])
                    : address + (address.contains("?") ? "&" : "?") + filled[i] + "="
                            + URLEncoder.encode(filled[i + 1], StandardCharsets.UTF_8);
        HttpResponse<byte[]> answer;
        if (method.equals("GET")) answer = program.get("/api" + address);
        else if (method.equals("DELETE")) answer = program.delete("/api" + address);
        else if (body instanceof byte[] file) answer = program.post("/api" + address, file);
        else {
            String json = JSON.writeValueAsString(body);
            assertThat(DESCRIPTION.wrongBody(method, "/api" + path, json)).isEmpty();
            answer = program.post("/api" + address, json);
        }
        String text = Program.text(answer);
        assertThat(answer.statusCode()).as(text).isEqualTo(status);
        assertThat(DESCRIPTION.wrongAnswer(method, "/api" + path, status, text)).isEmpty();
        return text.isEmpty() ? JSON.nullNode() : JSON.readTree(text);
    }

    private static JsonNode change(
            int status, String variant, long base, String path, @Nullable String before, @Nullable String after) {
        Map<String, Object> edit = new java.util.LinkedHashMap<>();
        edit.put("path", path);
        edit.put("before", before);
        edit.put("after", after);
        return ask(
                status,
                "POST",
                "/sites/{variant}/edits",
                Map.of("base", base, "edits", java.util.List.of(edit)),
                "variant",
                variant);
    }

    private static String fact(String variant, String path) {
        return ask(200, "GET", "/sites/{variant}/facts", null, "variant", variant, "path", path)
                .at("/facts/0/value")
                .asString("nothing");
    }

    @Test
    void aSiteIsBroughtFoundAndTakenAwayAgainWithoutLoss() throws IOException {
        byte[] file = Files.readAllBytes(Path.of("..", "examples", "terrace.yaml"));
        JsonNode head = ask(201, "POST", "/sites", file, "file", "terrace.yaml", "name", "As found");
        String variant = head.at("/variant/variant").asString();
        assertThat(head.at("/variant/name").asString()).isEqualTo("As found");

        JsonNode found = ask(
                200,
                "GET",
                "/sites",
                null,
                "text",
                head.at("/variant/designation").asString());
        assertThat(found.at("/sites/0/variants/0/variant").asString()).isEqualTo(variant);
        assertThat(ask(200, "GET", "/sites/{variant}", null, "variant", variant)
                        .at("/revision/kind")
                        .asString())
                .isEqualTo("IMPORTED");

        byte[] json = program.get("/api/sites/" + variant + "/site.json").body();
        assertThat(Digest.of(json).hex()).isEqualTo(head.at("/revision/digest").asString());
        byte[] yaml = program.get("/api/sites/" + variant + "/site.yaml").body();
        JsonNode again = ask(201, "POST", "/sites", yaml);
        assertThat(again.at("/revision/digest")).isEqualTo(head.at("/revision/digest"));
    }

    @Test
    void aBadFileIsToldWithAllThatIsWrongAndWhere() {
        byte[] file = "format: 1\nhouse:\n  boards:\n    - {id: a, desination: A}\n    - {id: A}\n"
                .getBytes(StandardCharsets.UTF_8);
        JsonNode refused = ask(422, "POST", "/sites", file, "file", "bad.yaml");
        assertThat(refused.at("/problems")).hasSizeGreaterThan(1);
        assertThat(refused.at("/problems/0/file").asString()).isEqualTo("bad.yaml");
        assertThat(refused.at("/problems/0/line").asInt()).isPositive();
    }

    @Test
    void anEditIsSavedAndJudged() {
        String variant = importTownHouse();
        String before = fact(variant, LENGTH);
        JsonNode changed = change(200, variant, 1, LENGTH, before, "23.5");
        assertThat(changed.at("/saved").asBoolean()).isTrue();
        assertThat(changed.at("/revision/revision").asInt()).isEqualTo(2);
        assertThat(changed.at("/revision/who").asString()).isEqualTo("program");
        assertThat(changed.at("/findings/counts/MET").asInt()).isPositive();
        assertThat(fact(variant, LENGTH)).isEqualTo("23.5");
        assertThat(desk.store().sites().revisions(new VariantId(variant))).hasSize(2);
    }

    @Test
    void whatIsSoAlreadyMakesNoRevision() {
        String variant = importTownHouse();
        String now = fact(variant, LENGTH);
        JsonNode changed = change(200, variant, 1, LENGTH, now, now);
        assertThat(changed.at("/saved").asBoolean()).isFalse();
        assertThat(changed.at("/revision/revision").asInt()).isEqualTo(1);
    }

    @Test
    void whoeverWantedTheSameFactIsToldWhatStandsThereNow() {
        String variant = importTownHouse();
        String before = fact(variant, LENGTH);
        change(200, variant, 1, LENGTH, before, "23.5");
        JsonNode conflict = change(409, variant, 1, LENGTH, before, "30");
        assertThat(conflict.at("/conflicts/0/now").asString()).isEqualTo("23.5");
        assertThat(conflict.at("/conflicts/0/after").asString()).isEqualTo("30");
        assertThat(conflict.at("/since/0/revision").asInt()).isEqualTo(2);
        assertThat(fact(variant, LENGTH)).isEqualTo("23.5");
    }

    @Test
    void aValueThatCannotBeIsRefusedInASentence() {
        String variant = importTownHouse();
        JsonNode refused = change(422, variant, 1, LENGTH, fact(variant, LENGTH), "-3");
        assertThat(refused.at("/problems/0/path").asString()).isEqualTo(LENGTH);
        assertThat(refused.at("/problems/0/sentence").asString()).contains("-3", "0.1 to 2000 m");
    }

    @Test
    void stepsBackAndForthAreRevisions() {
        String variant = importTownHouse();
        String before = fact(variant, LENGTH);
        change(200, variant, 1, LENGTH, before, "23.5");
        ask(200, "POST", "/sites/{variant}/undo", Map.of("base", 2), "variant", variant);
        assertThat(fact(variant, LENGTH)).isEqualTo(before);
        ask(200, "POST", "/sites/{variant}/redo", Map.of("base", 3), "variant", variant);
        assertThat(fact(variant, LENGTH)).isEqualTo("23.5");
        ask(409, "POST", "/sites/{variant}/undo", Map.of("base", 3), "variant", variant);
        ask(200, "POST", "/sites/{variant}/restore", Map.of("base", 4, "revision", 1), "variant", variant);

        JsonNode revisions = ask(200, "GET", "/sites/{variant}/revisions", null, "variant", variant);
        assertThat(revisions
                        .at("/revisions")
                        .valueStream()
                        .map(each -> each.at("/kind").asString()))
                .containsExactly("IMPORTED", "EDITED", "UNDONE", "REDONE", "RESTORED");
        JsonNode different =
                ask(200, "GET", "/sites/{variant}/difference", null, "variant", variant, "from", "1", "to", "2");
        assertThat(different.at("/edits")).hasSize(1);
        assertThat(different.at("/edits/0/path").asString()).endsWith(LENGTH);
        assertThat(ask(200, "GET", "/sites/{variant}/difference", null, "variant", variant, "from", "1")
                        .at("/edits"))
                .isEmpty();
    }

    @Test
    void findingsComeInTheFormOfTheCommandLine() throws InterruptedException {
        String variant = importTownHouse();
        long patienceUntil = System.nanoTime() + Duration.ofSeconds(60).toNanos();
        HttpResponse<byte[]> answer = program.get("/api/sites/" + variant + "/findings");
        while (answer.statusCode() == 202 && System.nanoTime() < patienceUntil) {
            Thread.sleep(100);
            answer = program.get("/api/sites/" + variant + "/findings");
        }
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(DESCRIPTION.wrongAnswer("GET", "/api/sites/{variant}/findings", 200, Program.text(answer)))
                .isEmpty();
        assertThat(JSON.readTree(answer.body()).at("/findings").size()).isGreaterThan(300);
    }

    @Test
    void attachmentsAreKeptGivenBackAndTakenAway() {
        String variant = importTownHouse();
        JsonNode kept = ask(
                201,
                "POST",
                "/sites/{variant}/attachments",
                PICTURE,
                "variant",
                variant,
                "file",
                "board.png",
                "place",
                "main-board");
        String id = kept.at("/attachment").asString();
        JsonNode list = ask(200, "GET", "/sites/{variant}/attachments", null, "variant", variant);
        assertThat(list.at("/attachments/0/attachment").asString()).isEqualTo(id);

        HttpResponse<byte[]> content = program.get("/api/attachments/" + id);
        assertThat(content.headers().firstValue("Content-Disposition"))
                .hasValueSatisfying(said -> assertThat(said).startsWith("attachment"));
        assertThat(content.headers().firstValue("Content-Type")).hasValue("image/png");
        assertThat(Digest.of(content.body()).hex()).isEqualTo(kept.at("/digest").asString());

        ask(204, "DELETE", "/attachments/{attachment}", null, "attachment", id);
        ask(404, "GET", "/attachments/{attachment}", null, "attachment", id);
    }

    @Test
    void whatIsNoPictureAndNoDocumentIsNotAttached() {
        String variant = importTownHouse();
        byte[] page = "<svg xmlns='http://www.w3.org/2000/svg'><script>alert(1)</script></svg>"
                .getBytes(StandardCharsets.UTF_8);
        JsonNode refused =
                ask(422, "POST", "/sites/{variant}/attachments", page, "variant", variant, "file", "plan.svg");
        assertThat(refused.at("/problems/0/sentence").asString()).contains("plan.svg");
    }

    @Test
    void aBackupIsAWholeStore() throws IOException {
        String variant = importTownHouse();
        HttpResponse<byte[]> backup = program.get("/api/backup");
        assertThat(backup.statusCode()).isEqualTo(200);
        Path folder = Files.createTempDirectory("tideover-restored");
        Path file = Files.write(folder.resolve("backup.db"), backup.body());
        Store.restore(folder, file, FieldTable.load(), Instant.now());
        try (Store restored = Store.open(folder, FieldTable.load())) {
            assertThat(restored.sites().find(new VariantId(variant))).isPresent();
        }
    }

    @Test
    void aCustomerIsKeptChangedAndSaidToOwnASite() {
        String variant = importTownHouse();
        JsonNode kept = ask(
                201,
                "POST",
                "/customers",
                Map.of("name", " Berta\tMuster ", "contacts", java.util.List.of(Map.of("name", "Carl"), Map.of())));
        String id = kept.at("/customer").asString();
        assertThat(kept.at("/facts/name").asString()).isEqualTo("Berta Muster");
        assertThat(kept.at("/facts/contacts")).hasSize(1);

        ask(204, "POST", "/sites/{variant}/customers/{customer}", new byte[0], "variant", variant, "customer", id);
        assertThat(ask(200, "GET", "/sites/{variant}/customers", null, "variant", variant)
                        .at("/customers/0/customer")
                        .asString())
                .isEqualTo(id);
        Map<String, Object> change = Map.of("before", kept.at("/facts"), "after", Map.of("name", "Berta Beispiel"));
        JsonNode changed = ask(200, "POST", "/customers/{customer}", change, "customer", id);
        assertThat(changed.at("/facts/contacts")).isEmpty();
        assertThat(changed.at("/sites")).hasSize(1);
        assertThat(ask(409, "POST", "/customers/{customer}", change, "customer", id)
                        .at("/problems/0/sentence")
                        .asString())
                .contains("nothing was saved");
        assertThat(ask(200, "GET", "/customers/{customer}", null, "customer", id))
                .isEqualTo(changed);

        ask(204, "DELETE", "/sites/{variant}/customers/{customer}", null, "variant", variant, "customer", id);
        assertThat(ask(200, "GET", "/sites/{variant}/customers", null, "variant", variant)
                        .at("/customers"))
                .isEmpty();
    }

    @Test
    void aCustomerWithoutANameIsNotKept() {
        JsonNode refused = ask(422, "POST", "/customers", Map.of("name", " ", "town", "Neustadt"));
        assertThat(refused.at("/problems/0/sentence").asString()).startsWith("Name: write one.");
        assertThat(ask(200, "GET", "/customers", null, "text", "neustadt").at("/customers"))
                .isEmpty();
    }

    @Test
    void aCustomerIsFoundAndForgotten() {
        var customer = desk.store().customers().create(CustomerFacts.named("Ada Beispiel"));
        JsonNode found = ask(200, "GET", "/customers", null, "text", "beispiel");
        assertThat(found.at("/customers/0/customer").asString())
                .isEqualTo(customer.id().text());
        ask(
                204,
                "DELETE",
                "/customers/{customer}",
                null,
                "customer",
                customer.id().text());
        assertThat(ask(200, "GET", "/customers", null, "text", "beispiel").at("/customers"))
                .isEmpty();
    }

    @ParameterizedTest(name = "{0} {1} {2}: {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "GET | /api/sites/0123456789abcdef | | 404",
                "GET | /api/sites/nonsense | | 404",
                "GET | /api/nowhere | | 404",
                "GET | /api/sites?shelf=ATTIC | | 400",
                "DELETE | /api/sites | | 405",
                "POST | /api/customers/0123456789abcdef | {} | 404",
                "POST | /api/sites/{variant}/customers/0123456789abcdef | {} | 404",
                "POST | /api/customers | [] | 400",
                "POST | /api/sites/{variant}/edits | {} | 400",
                "POST | /api/sites/{variant}/edits | {\"base\":1} | 400",
                "POST | /api/sites/{variant}/edits | {\"base\":1,\"edits\":[{\"path\":7}],\"more\":1} | 400",
                "POST | /api/sites/{variant}/edits | {\"base\":1,\"edits\":[null]} | 400",
                "POST | /api/sites/{variant}/edits | {\"base\":1,\"edits\":[{}]} | 400",
                "POST | /api/sites/{variant}/edits | {\"base\":1,\"edits\": | 400",
                "POST | /api/sites/{variant}/edits | [1] | 400",
                "POST | /api/sites/{variant}/edits | {\"base\":0,\"edits\":[{\"path\":\"nothing.there\"}]} | 422",
                "POST | /api/sites/{variant}/undo | '' | 400",
                "GET | /api/sites/{variant}/difference?from=9 | | 404",
                "GET | /api/sites/{variant}/difference?from=x | | 400",
                "GET | /api/sites/{variant}/difference | | 400",
                "GET | /api/sites/{variant}/site.yaml?revision=0 | | 404",
                "POST | /api/sites/{variant}/attachments?file=a.png&place=!! | x | 400",
            })
    void whatCannotBeReadIsRefusedInASentence(String method, String path, @Nullable String body, int status) {
        String variant = importTownHouse();
        String address = path.replace("{variant}", variant);
        HttpResponse<byte[]> answer = switch (method) {
            case "GET" -> program.get(address);
            case "DELETE" -> program.delete(address);
            default -> program.post(address, body == null ? "" : body);
        };
        String text = Program.text(answer);
        assertThat(answer.statusCode()).as(text).isEqualTo(status);
        JsonNode refused = JSON.readTree(text);
        assertThat(refused.at("/problems/0/sentence").asString())
                .isNotBlank()
                .doesNotContain("tideover.", "java.", "Exception");
    }
}
