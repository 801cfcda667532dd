package tideover.command.kept;

import java.io.IOException;
import java.io.StringWriter;
import java.net.http.HttpRequest;
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
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;
import tideover.store.site.RevisionKind;
import tideover.store.site.SiteSearch.Shelf;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** The store of a workbench that runs, asked over its HTTP API with its key. */
final class RunningWorkbench implements Keeping {
    /** For the whole of a large store. */
    private static final Duration LONG_PATIENCE = Duration.ofMinutes(10);

    private final WorkbenchCalls calls;
    private final Desk desk;

    RunningWorkbench(ServingFile serving, Desk desk) {
        this.calls = new WorkbenchCalls(serving, desk);
        this.desk = desk;
    }

    @Override
    public List<KeptVariant> list(String text, Shelf shelf) {
        List<KeptVariant> variants = new ArrayList<>();
        for (JsonValue site : calls.json(
                        calls.reading("/sites?text=" + WorkbenchCalls.encoded(text) + "&shelf=" + shelf))
                .at("sites")
                .items()) site.at("variants").items().forEach(variant -> variants.add(variant(variant)));
        return variants;
    }

    @Override
    public Optional<KeptVariant> find(String variant) {
        HttpResponse<String> answer = calls.send(calls.reading("/sites/" + WorkbenchCalls.encoded(variant)));
        if (answer.statusCode() == WorkbenchCalls.NOT_FOUND) return Optional.empty();
        return Optional.of(variant(calls.read(answer).at("variant")));
    }

    @Override
    public KeptVariant bring(String file, byte[] bytes, String name) {
        String path = "/sites?file=" + WorkbenchCalls.encoded(file) + "&name=" + WorkbenchCalls.encoded(name);
        return variant(calls.json(calls.file(path, bytes)).at("variant"));
    }

    @Override
    public Site site(KeptVariant variant, @Nullable Long revision) {
        String number = revision == null ? "" : "?revision=" + revision;
        HttpResponse<String> answer = calls.send(calls.reading(address(variant, "/site.json" + number)));
        if (answer.statusCode() == WorkbenchCalls.NOT_FOUND)
            throw new Refusal(List.of(
                    desk.sentence("keeping.noRevision", variant.designation(), String.valueOf(variant.revision()))));
        if (answer.statusCode() > WorkbenchCalls.GOOD) throw calls.refusal(answer);
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
        return saved(calls.post(address(variant, "/edits"), body.toString()));
    }

    @Override
    public Saved undo(KeptVariant variant) {
        return saved(calls.post(address(variant, "/undo"), "{\"base\":" + variant.revision() + "}"));
    }

    @Override
    public Saved redo(KeptVariant variant) {
        return saved(calls.post(address(variant, "/redo"), "{\"base\":" + variant.revision() + "}"));
    }

    private Saved saved(HttpRequest.Builder request) {
        JsonValue changed = calls.json(request);
        return new Saved(
                changed.at("saved").isTrue() ? Saved.Kind.SAVED : Saved.Kind.UNCHANGED,
                changed.at("revision").at("revision").number(),
                changed.at("findings").at("sentence").text());
    }

    @Override
    public List<KeptRevision> revisions(KeptVariant variant) {
        return calls.json(calls.reading(address(variant, "/revisions"))).at("revisions").items().stream()
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
        return edits(calls.json(calls.reading(address(variant, "/difference?from=%d&to=%d".formatted(from, to)))));
    }

    @Override
    public KeptCustomers customers() {
        return new RunningCustomers(calls);
    }

    @Override
    public KeptAttachments attachments() {
        return new RunningAttachments(calls);
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
            HttpResponse<Path> answer = calls.client.send(
                    calls.reading("/backup").timeout(LONG_PATIENCE).build(),
                    BodyHandlers.ofFile(part, StandardOpenOption.CREATE, StandardOpenOption.WRITE));
            if (answer.statusCode() > WorkbenchCalls.GOOD) throw calls.refusal(Files.readString(part));
            Files.move(part, file);
        } catch (NoSuchFileException e) {
            throw StoreRefusal.of(Reason.FILE_MISSING, file.resolveSibling(""));
        } catch (IOException e) {
            throw new Refusal(List.of(desk.sentence("command.unwritable", file.toString())));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw calls.silent();
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
                json.at("site").text(),
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

    static String address(KeptVariant variant, String inside) {
        return "/sites/" + variant.variant() + inside;
    }
}
