package tideover.store.site;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.files.Edit;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** Edits as they stand in the database: a list of path, before, after; a text that is not there is left out. */
final class EditsJson {
    private static final JsonFactory JSON = new JsonFactory();

    private EditsJson() {}

    static String text(List<Edit> edits) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(ObjectWriteContext.empty(), text)) {
            json.writeStartArray();
            for (Edit edit : edits) {
                json.writeStartObject();
                member("path", edit.path(), json);
                member("before", edit.before(), json);
                member("after", edit.after(), json);
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        return text.toString();
    }

    private static void member(String name, @Nullable String value, JsonGenerator json) {
        if (value != null) json.writeName(name).writeString(value);
    }

    static List<Edit> of(String text) {
        List<Edit> edits = new ArrayList<>();
        try (JsonParser json = JSON.createParser(ObjectReadContext.empty(), text)) {
            json.nextToken();
            while (json.nextToken() == JsonToken.START_OBJECT) {
                String path = "";
                String before = null;
                String after = null;
                while (json.nextToken() == JsonToken.PROPERTY_NAME) {
                    String name = json.currentName();
                    String value = json.nextStringValue();
                    if (name.equals("path")) path = value;
                    else if (name.equals("before")) before = value;
                    else after = value;
                }
                edits.add(new Edit(path, before, after));
            }
        }
        return edits;
    }
}
