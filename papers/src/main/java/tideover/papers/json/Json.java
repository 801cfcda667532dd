package tideover.papers.json;

import java.util.Collection;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** What all our JSON has in common: what is not there is null, and JSON has no infinity. */
public final class Json {

    /** Lines a person can read and a version control can compare. */
    public static final ObjectWriteContext PRETTY = new ObjectWriteContext.Base() {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter();
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    };

    private Json() {}

    /** A list of texts. */
    public static <T> void array(JsonGenerator json, String name, Collection<T> items, Function<T, String> text) {
        json.writeArrayPropertyStart(name);
        for (T item : items) json.writeString(text.apply(item));
        json.writeEndArray();
    }

    /** A text that may be missing. */
    public static void text(JsonGenerator json, String name, @Nullable String value) {
        if (value == null) json.writeNullProperty(name);
        else json.writeStringProperty(name, value);
    }

    /** What never ends is null; the unit, in the name or beside it, still says of what. */
    public static void number(JsonGenerator json, String name, @Nullable Double value) {
        if (value == null || !Double.isFinite(value)) json.writeNullProperty(name);
        else json.writeNumberProperty(name, value);
    }
}
