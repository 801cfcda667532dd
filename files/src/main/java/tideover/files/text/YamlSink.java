package tideover.files.text;

import java.io.StringWriter;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.DumpSettings;
import org.snakeyaml.engine.v2.api.StreamDataWriter;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.emitter.Emitter;
import org.snakeyaml.engine.v2.events.DocumentEndEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.ImplicitTuple;
import org.snakeyaml.engine.v2.events.MappingEndEvent;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceEndEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.events.StreamEndEvent;
import org.snakeyaml.engine.v2.events.StreamStartEvent;

/** YAML as a person would lay it out. */
public final class YamlSink implements Sink {
    private static final ImplicitTuple UNTAGGED = new ImplicitTuple(true, true);

    private final Lines lines = new Lines();
    private final Emitter emitter = new Emitter(
            DumpSettings.builder()
                    .setIndent(2)
                    .setIndicatorIndent(2)
                    .setIndentWithIndicator(true)
                    .setWidth(120)
                    .setUseUnicodeEncoding(true)
                    .build(),
            lines);

    public YamlSink() {
        emitter.emit(new StreamStartEvent());
        emitter.emit(new DocumentStartEvent(false, Optional.empty(), Map.of()));
    }

    /** What was written; ends the writing. */
    public String finish() {
        emitter.emit(new DocumentEndEvent(false));
        emitter.emit(new StreamEndEvent());
        return lines.toString();
    }

    @Override
    public void beginMapping(Layout layout) {
        emitter.emit(new MappingStartEvent(Optional.empty(), Optional.empty(), true, style(layout)));
    }

    @Override
    public void endMapping() {
        emitter.emit(new MappingEndEvent());
    }

    @Override
    public void beginList(Layout layout) {
        emitter.emit(new SequenceStartEvent(Optional.empty(), Optional.empty(), true, style(layout)));
    }

    @Override
    public void endList() {
        emitter.emit(new SequenceEndEvent());
    }

    @Override
    public void key(String key) {
        scalar(key, ScalarStyle.PLAIN);
    }

    @Override
    public void text(String text) {
        scalar(text, looksLikeText(text) ? ScalarStyle.PLAIN : ScalarStyle.DOUBLE_QUOTED);
    }

    @Override
    public void number(String number) {
        scalar(number, ScalarStyle.PLAIN);
    }

    @Override
    public void yesNo(boolean value) {
        scalar(Boolean.toString(value), ScalarStyle.PLAIN);
    }

    private void scalar(String value, ScalarStyle style) {
        emitter.emit(new ScalarEvent(Optional.empty(), Optional.empty(), UNTAGGED, value, style));
    }

    private static FlowStyle style(Layout layout) {
        return layout == Layout.BLOCK ? FlowStyle.BLOCK : FlowStyle.FLOW;
    }

    /** Whether every reader of YAML takes the text, unquoted, for text: no number, no word of any YAML version. */
    private static boolean looksLikeText(String text) {
        if (text.isEmpty() || !text.equals(text.strip())) return false;
        char first = text.charAt(0);
        if (first == '.' || first == '+' || first == '-' || (first >= '0' && first <= '9')) return false;
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "null", "~", "true", "false", "yes", "no", "on", "off", "y", "n" -> false;
            default -> true;
        };
    }

    /** Collects what the emitter writes. */
    private static final class Lines extends StringWriter implements StreamDataWriter {
        @Override
        public void flush() {
            super.flush();
        }
    }
}
