package tideover.files.text;

import java.io.StringWriter;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** JSON: without a blank for machines, or with a line for each part. */
public final class JsonSink implements Sink {
    private static final ObjectWriteContext WITH_LINES = new ObjectWriteContext.Base() {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            // Line ends as in the rest of the project, whatever the platform.
            return new DefaultPrettyPrinter()
                    .withObjectIndenter(new DefaultIndenter("  ", "\n"))
                    .withArrayIndenter(new DefaultPrettyPrinter.FixedSpaceIndenter());
        }
    };

    private static final JsonFactory FACTORY = new JsonFactory();

    private final StringWriter text = new StringWriter();
    private final JsonGenerator json;

    public JsonSink(Layout layout) {
        json = FACTORY.createGenerator(layout == Layout.LINE ? ObjectWriteContext.empty() : WITH_LINES, text);
    }

    /** What was written; ends the writing. */
    public String finish() {
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
