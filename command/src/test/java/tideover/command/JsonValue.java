package tideover.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/** JSON as another program would read it. */
record JsonValue(@Nullable Object value) {

    static JsonValue of(String text) {
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), text)) {
            return new JsonValue(read(parser, parser.nextToken()));
        }
    }

    private static @Nullable Object read(JsonParser parser, JsonToken token) {
        if (token == JsonToken.START_OBJECT) {
            Map<String, @Nullable Object> object = new LinkedHashMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String name = parser.currentName();
                object.put(name, read(parser, parser.nextToken()));
            }
            return object;
        }
        if (token == JsonToken.START_ARRAY) {
            List<@Nullable Object> array = new ArrayList<>();
            for (JsonToken next = parser.nextToken(); next != JsonToken.END_ARRAY; next = parser.nextToken())
                array.add(read(parser, next));
            return array;
        }
        if (token == JsonToken.VALUE_NULL) return null;
        if (token.isBoolean()) return token == JsonToken.VALUE_TRUE;
        return token.isNumeric() ? (Object) parser.getDoubleValue() : parser.getString();
    }

    JsonValue at(String field) {
        if (value instanceof Map<?, ?> object && object.containsKey(field)) return new JsonValue(object.get(field));
        throw new NoSuchElementException(field);
    }

    List<JsonValue> items() {
        return ((List<?>) value).stream().map(JsonValue::new).toList();
    }

    JsonValue first() {
        return items().get(0);
    }

    /** The first of a list whose field is a text. */
    JsonValue find(String field, String text) {
        return items().stream()
                .filter(item -> text.equals(item.at(field).value()))
                .findFirst()
                .orElseThrow();
    }

    double number() {
        return (Double) value;
    }

    String text() {
        return (String) value;
    }
}
