package tideover.command.kept;

import java.io.IOException;
import java.io.StringWriter;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.engine.site.Site;
import tideover.files.Edit;
import tideover.files.SiteFileResult;
import tideover.files.SiteFiles;
import tideover.papers.json.Json;
import tideover.store.ServingFile;
import tideover.store.customer.Customers.PersonalAttachments;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;
import tideover.store.site.RevisionKind;
import tideover.store.site.SiteSearch.Shelf;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** The store of a workbench that runs, asked over its HTTP API with its key. */
final class RunningWorkbench implements Keeping {
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    /** For the whole of a large store. */
    private static final Duration LONG_PATIENCE = Duration.ofMinutes(10);

    private static final int NOT_FOUND = 404;
    private static final int GOOD = 299;

    private final ServingFile serving;
    private final Desk desk;
    private final HttpClient client = HttpClient.newHttpClient();

    RunningWorkbench(ServingFile serving, Desk desk) {
        this.serving = serving;
        this.desk = desk;
    }

    @Override
    public List<KeptVariant> list(String text, Shelf shelf) {
        List<KeptVariant> variants = new ArrayList<>();
        for (JsonValue site : json(reading("/sites?text=" + encoded(text) + "&shelf=" + shelf))
                .at("sites")
                .items()) site.at("variants").items().forEach(variant -> variants.add(variant(variant)));
        return variants;
    }

    @Override
    public Optional<KeptVariant> find(String variant) {
        HttpResponse<String> answer = send(reading("/sites/" + encoded(variant)));
        if (answer.statusCode() == NOT_FOUND) return Optional.empty();
        return Optional.of(variant(read(answer).at("variant")));
    }

    @Override
    public KeptVariant bring(String file, byte[] bytes, String name) {
        HttpRequest.Builder request = request("/sites?file=" + encoded(file) + "&name=" + encoded(name))
                .header("Content-Type", "application/octet-stream")
                .POST(BodyPublishers.ofByteArray(bytes));
        return variant(json(request).at("variant"));
    }

    @Override
    public Site site(KeptVariant variant, @Nullable Long revision) {
        String number = revision == null ? "" : "?revision=" + revision;
        HttpResponse<String> answer = send(reading(address(variant, "/site.json" + number)));
        if (answer.statusCode() == NOT_FOUND)
            throw new Refusal(List.of(
                    desk.sentence("keeping.noRevision", variant.designation(), String.valueOf(variant.revision()))));
        if (answer.statusCode() > GOOD) throw refusal(answer);
        SiteFileResult result = new SiteFiles(desk.fields())
                .read(variant.designation(), answer.body().getBytes(StandardCharsets.UTF_8));
        if (result instanceof SiteFileResult.Readable readable) return readable.site();
        throw desk.refusal(((SiteFileResult.Refused) result).problems());
    }

    @Override
    public Saved change(KeptVariant variant, List<Edit> edits, String note) {
        StringWriter body = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(Json.PRETTY, body)) {
            json.writeStartObject();
            json.writeNumberProperty("base", variant.revision());
            json.writeStringProperty("note", note);
            json.writeArrayPropertyStart("edits");
            for (Edit edit : edits) {
                json.writeStartObject();
                json.writeStringProperty("path", edit.path());
                Json.text(json, "before", edit.before());
                Json.text(json, "after", edit.after());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        return saved(post(address(variant, "/edits"), body.toString()));
    }

    @Override
    public Saved undo(KeptVariant variant) {
        return saved(post(address(variant, "/undo"), "{\"base\":" + variant.revision() + "}"));
    }

    @Override
    public Saved redo(KeptVariant variant) {
        return saved(post(address(variant, "/redo"), "{\"base\":" + variant.revision() + "}"));
    }

    private Saved saved(HttpRequest.Builder request) {
        JsonValue changed = json(request);
        return new Saved(
                changed.at("saved").isTrue() ? Saved.Kind.SAVED : Saved.Kind.UNCHANGED,
                changed.at("revision").at("revision").number(),
                changed.at("findings").at("sentence").text());
    }

    @Override
    public List<KeptRevision> revisions(KeptVariant variant) {
        return json(reading(address(variant, "/revisions"))).at("revisions").items().stream()
                .map(each -> new KeptRevision(
                        each.at("revision").number(),
                        RevisionKind.valueOf(each.at("kind").text()),
                        each.at("who").text(),
                        Instant.parse(each.at("when").text()),
                        each.at("note").text(),
                        edits(each)))
                .toList();
    }

    @Override
    public List<Edit> difference(KeptVariant variant, long from, long to) {
        return edits(json(reading(address(variant, "/difference?from=%d&to=%d".formatted(from, to)))));
    }

    @Override
    public List<KeptCustomer> customers(String text) {
        return json(reading("/customers?text=" + encoded(text))).at("customers").items().stream()
                .map(each -> new KeptCustomer(
                        each.at("customer").text(),
                        each.at("name").text(),
                        each.at("town").text()))
                .toList();
    }

    @Override
    public void forget(KeptCustomer customer, PersonalAttachments attachments) {
        json(request("/customers/" + customer.id() + "?attachments=" + attachments)
                .DELETE());
    }

    @Override
    public void backup(Path file) {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        if (Files.exists(file)) throw StoreRefusal.of(Reason.FILE_EXISTS, file);
        try {
            Files.deleteIfExists(part);
            if (part.getFileSystem().supportedFileAttributeViews().contains("posix"))
                Files.createFile(
                        part, PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")));
            HttpResponse<Path> answer = client.send(
                    reading("/backup").timeout(LONG_PATIENCE).build(),
                    BodyHandlers.ofFile(part, StandardOpenOption.CREATE, StandardOpenOption.WRITE));
            if (answer.statusCode() > GOOD) throw refusal(Files.readString(part));
            Files.move(part, file);
        } catch (NoSuchFileException e) {
            throw StoreRefusal.of(Reason.FILE_MISSING, file.resolveSibling(""));
        } catch (IOException e) {
            throw new Refusal(List.of(desk.sentence("command.unwritable", file.toString())));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw silent();
        } finally {
            try {
                Files.deleteIfExists(part);
            } catch (IOException e) {
                desk.say("command.unwritable", part.toString());
            }
        }
    }

    @Override
    public void close() {
        // The workbench goes on; connections end with the process.
    }

    private static KeptVariant variant(JsonValue json) {
        return new KeptVariant(
                json.at("variant").text(),
                json.at("name").text(),
                json.at("revision").number(),
                json.at("designation").text(),
                json.at("country").text(),
                Instant.parse(json.at("changed").text()));
    }

    private static List<Edit> edits(JsonValue json) {
        return json.at("edits").items().stream()
                .map(each -> new Edit(
                        each.at("path").text(),
                        each.at("before").textOrNothing(),
                        each.at("after").textOrNothing()))
                .toList();
    }

    private static String address(KeptVariant variant, String inside) {
        return "/sites/" + variant.variant() + inside;
    }

    private HttpRequest.Builder reading(String path) {
        return request(path).GET();
    }

    private HttpRequest.Builder post(String path, String json) {
        return request(path).header("Content-Type", "application/json").POST(BodyPublishers.ofString(json));
    }

    private HttpRequest.Builder request(String path) {
        return HttpRequest.newBuilder(URI.create("http://127.0.0.1:%d/api%s".formatted(serving.port(), path)))
                .timeout(PATIENCE)
                .header("Authorization", "Bearer " + serving.key());
    }

    private JsonValue json(HttpRequest.Builder request) {
        return read(send(request));
    }

    private JsonValue read(HttpResponse<String> answer) {
        if (answer.statusCode() > GOOD) throw refusal(answer);
        try {
            return answer.body().isEmpty() ? new JsonValue(null) : JsonValue.read(answer.body());
        } catch (JacksonException e) {
            throw silent();
        }
    }

    private HttpResponse<String> send(HttpRequest.Builder request) {
        try {
            return client.send(request.build(), BodyHandlers.ofString());
        } catch (IOException e) {
            throw silent();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw silent();
        }
    }

    /** The sentences of the workbench; file, line and column before those about a file. */
    private Refusal refusal(HttpResponse<String> answer) {
        return refusal(answer.body());
    }

    private Refusal refusal(String body) {
        try {
            List<String> sentences = JsonValue.read(body).at("problems").items().stream()
                    .map(this::sentence)
                    .toList();
            return sentences.isEmpty() ? silent() : new Refusal(sentences);
        } catch (JacksonException e) {
            return silent();
        }
    }

    private String sentence(JsonValue problem) {
        String what = problem.at("sentence").text();
        String file = problem.at("file").text();
        long line = problem.at("line").number();
        if (file.isEmpty()) return what;
        return line == 0
                ? desk.sentence("problem.inFile", file, what)
                : desk.sentence(
                        "problem.atLine",
                        file,
                        String.valueOf(line),
                        String.valueOf(problem.at("column").number()),
                        what);
    }

    private Refusal silent() {
        return new Refusal(List.of(desk.sentence("keeping.silent", String.valueOf(serving.port()))));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
