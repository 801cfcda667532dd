package tideover.web.api;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.databind.json.JsonMapper;

/** The OpenAPI description as it is served, and whether what is sent is of its form. */
final class ApiDescription {
    private static final Set<String> METHODS = Set.of("get", "post", "put", "patch", "delete");
    private static final JsonMapper JSON = new JsonMapper();

    private final Map<String, Object> whole;

    ApiDescription() {
        try (InputStream file =
                Objects.requireNonNull(ApiDescription.class.getResourceAsStream("/tideover/web/api/openapi.yaml"))) {
            this.whole = mapping(
                    new Load(LoadSettings.builder().setAllowDuplicateKeys(false).build()).loadFromInputStream(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every operation, such as {@code GET /api/sites}. */
    Set<String> operations() {
        Set<String> found = new TreeSet<>();
        mapping(whole.get("paths"))
                .forEach((path, item) -> mapping(item).keySet().stream()
                        .filter(METHODS::contains)
                        .forEach(method -> found.add(method.toUpperCase(java.util.Locale.ROOT) + " " + path)));
        return found;
    }

    /** What an operation says it may answer. */
    Set<String> statuses(String method, String path) {
        return mapping(operation(method, path).get("responses")).keySet();
    }

    /** Names of the operations, one for each. */
    List<String> names() {
        return operations().stream()
                .map(each -> each.split(" "))
                .map(each -> String.valueOf(operation(each[0], each[1]).get("operationId")))
                .toList();
    }

    /** Where the description points to nothing. */
    Set<String> danglingReferences() {
        Set<String> dangling = new TreeSet<>();
        collectDangling(whole, dangling);
        return dangling;
    }

    private void collectDangling(@Nullable Object node, Set<String> dangling) {
        if (node instanceof Map<?, ?> map) {
            if (map.get("$ref") instanceof String reference && at(reference) == null) dangling.add(reference);
            map.values().forEach(value -> collectDangling(value, dangling));
        } else if (node instanceof List<?> list) {
            list.forEach(value -> collectDangling(value, dangling));
        }
    }

    /** What is wrong with an answer of an operation. */
    List<String> wrongAnswer(String method, String path, int status, String json) {
        Map<String, Object> responses = mapping(operation(method, path).get("responses"));
        Object response = resolved(
                responses.getOrDefault(Integer.toString(status), status >= 400 ? responses.get("default") : null));
        if (response == null) return List.of("%s %s may not answer %d".formatted(method, path, status));
        return wrong(schema(mapping(response)), json);
    }

    /** What is wrong with what is sent to an operation. */
    List<String> wrongBody(String method, String path, String json) {
        return wrong(schema(mapping(resolved(operation(method, path).get("requestBody")))), json);
    }

    private List<String> wrong(@Nullable Object schema, String json) {
        if (schema == null) return json.isEmpty() ? List.of() : List.of("no body is described");
        Map<String, Object> rooted =
                Map.of("allOf", List.of(schema), "components", Objects.requireNonNull(whole.get("components")));
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(JSON.writeValueAsString(rooted))
                .validate(json, InputFormat.JSON)
                .stream()
                .map(Error::toString)
                .toList();
    }

    private static @Nullable Object schema(Map<String, Object> described) {
        Object content = described.get("content");
        if (content == null) return null;
        Object json = mapping(content).get("application/json");
        return json == null ? null : mapping(json).get("schema");
    }

    private Map<String, Object> operation(String method, String path) {
        Object item = mapping(whole.get("paths")).get(path);
        if (item == null) throw new AssertionError("nothing is described at " + path);
        return mapping(mapping(item).get(method.toLowerCase(java.util.Locale.ROOT)));
    }

    private @Nullable Object resolved(@Nullable Object node) {
        return node instanceof Map<?, ?> map && map.get("$ref") instanceof String reference ? at(reference) : node;
    }

    private @Nullable Object at(String reference) {
        Object node = whole;
        for (String part : reference.substring("#/".length()).split("/"))
            node = node instanceof Map<?, ?> map ? map.get(part) : null;
        return node;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> mapping(@Nullable Object node) {
        return (Map<String, Object>) Objects.requireNonNull(node);
    }
}
