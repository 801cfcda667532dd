package tideover.web.guard;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.SiteFileResult;
import tideover.files.SiteFiles;
import tideover.files.SiteWriter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Texts that would be something else if anybody took them for more than texts, in every free text of a house. */
final class HostileTexts {
    static final List<String> ALL = List.of(
            "<script>window.hacked=1</script>",
            "\"><img src=x onerror=window.hacked=1>",
            "'><svg onload=window.hacked=1>",
            "</title></style></textarea><b id=hacked>",
            "{{7*7}} ${7*7} #{7*7}",
            "]]><hacked/>",
            "=cmd|' /C calc'!A0",
            "+1+1",
            "-1-1",
            "@SUM(1)",
            "javascript:window.hacked=1",
            "&lt;b id=hacked&gt;",
            "%s {0} '' 'x",
            "\u202Ehacked");

    /** Texts that other parts of the file refer to, or that are words of a list somewhere else. */
    private static final Set<String> REFERRED_TO =
            Set.of("country", "timeZone", "about", "check", "terminals", "names", "secondNeutral", "passThrough");

    private static final JsonMapper JSON = new JsonMapper();

    private int used;
    private final Set<String> texts;

    private HostileTexts(FieldTable fields) {
        this.texts = fields.all().stream()
                .filter(field -> field.kind() == FieldKind.TEXT || field.kind() == FieldKind.TEXTS)
                .map(Field::name)
                .filter(name -> !REFERRED_TO.contains(name))
                .collect(java.util.stream.Collectors.toUnmodifiableSet());
    }

    /** The next of them, told apart by a number. */
    private String next() {
        String text = ALL.get(used % ALL.size());
        used++;
        return text + " " + used;
    }

    /** An example with such a text wherever a person may write what they like. */
    static String house(String example) {
        FieldTable fields = FieldTable.load();
        try {
            byte[] file = Files.readAllBytes(Path.of("..", "examples", example));
            SiteFileResult.Readable site = (SiteFileResult.Readable) new SiteFiles(fields).read(example, file);
            JsonNode tree = JSON.readTree(new SiteWriter(fields).canonicalJson(site.site()));
            HostileTexts hostile = new HostileTexts(fields);
            hostile.spoil(tree);
            // Where the example says nothing of the kind.
            ObjectNode house = (ObjectNode) tree.get("house");
            ((ObjectNode) house.get("gridOperator")).set("conditions", JSON.valueToTree(ALL));
            ((ArrayNode) tree.withArray("evidence"))
                    .addObject()
                    .put("about", "oven.cable.lengthM")
                    .put("origin", "READ")
                    .put("by", hostile.next())
                    .put("document", hostile.next());
            return JSON.writeValueAsString(tree);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void spoil(JsonNode node) {
        if (node instanceof ObjectNode object)
            for (Map.Entry<String, JsonNode> part : List.copyOf(object.properties())) {
                if (texts.contains(part.getKey()) && part.getValue().isString()) object.put(part.getKey(), next());
                else spoil(part.getValue());
            }
        else if (node instanceof ArrayNode list) list.forEach(this::spoil);
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
