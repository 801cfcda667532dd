package tideover.command.kept;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/**
 * JSON that was answered.
 *
 * @param value a map, a list, a text, a number, a truth value or nothing
 */
record JsonValue(@Nullable Object value) {
    private static final JsonValue NOTHING = new JsonValue(null);

    /** @throws tools.jackson.core.JacksonException where it is none */
    static JsonValue read(String json) {
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), json)) {
            parser.nextToken();
            return new JsonValue(value(parser));
        }
    }

    private static @Nullable Object value(JsonParser parser) {
        return switch (parser.currentToken()) {
            case START_OBJECT -> {
                Map<String, @Nullable Object> map = new LinkedHashMap<>();
                while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
                    String name = parser.currentName();
                    parser.nextToken();
                    map.put(name, value(parser));
                }
                yield map;
            }
            case START_ARRAY -> {
                List<@Nullable Object> list = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) list.add(value(parser));
                yield list;
            }
            case VALUE_NUMBER_INT -> parser.getLongValue();
            case VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> true;
            case VALUE_FALSE -> false;
            case VALUE_STRING -> parser.getString();
            default -> null;
        };
    }

    /** A part of a map; nothing where there is none. */
    JsonValue at(String name) {
        return value instanceof Map<?, ?> map ? new JsonValue(map.get(name)) : NOTHING;
    }

    List<JsonValue> items() {
        return value instanceof List<?> list ? list.stream().map(JsonValue::new).toList() : List.of();
    }

    @Nullable
    String textOrNothing() {
        return value instanceof String text ? text : null;
    }

    /** A text; empty where there is none. */
    String text() {
        return value instanceof String text ? text : "";
    }

    long number() {
        return value instanceof Long number ? number : 0;
    }

    boolean isTrue() {
        return Boolean.TRUE.equals(value);
    }
}
