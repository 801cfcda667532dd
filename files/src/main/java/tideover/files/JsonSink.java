package tideover.files;

import java.io.StringWriter;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/** JSON without a blank. */
final class JsonSink implements Sink {
    private final StringWriter text = new StringWriter(16 * 1024);
    private final JsonGenerator json = new JsonFactory().createGenerator(ObjectWriteContext.empty(), text);

    /** What was written; ends the writing. */
    String finish() {
        json.close();
        return text.toString();
    }

    @Override
    public void beginMapping(Layout layout) {
        json.writeStartObject();
    }

    @Override
    public void endMapping() {
        json.writeEndObject();
    }

    @Override
    public void beginList(Layout layout) {
        json.writeStartArray();
    }

    @Override
    public void endList() {
        json.writeEndArray();
    }

    @Override
    public void key(String key) {
        json.writeName(key);
    }

    @Override
    public void text(String value) {
        json.writeString(value);
    }

    @Override
    public void number(String number) {
        json.writeNumber(number);
    }

    @Override
    public void yesNo(boolean value) {
        json.writeBoolean(value);
    }
}
