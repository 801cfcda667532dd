package tideover.papers;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The texts of one language by key. English lies in {@code NAME.properties}; a further language lays
 * {@code NAME_xx.properties} over it, so that a sentence not yet translated appears in English.
 */
final class Bundle {

    /** The files, in the order of reading; a key stands in one of them only. */
    static final List<String> FILES = List.of(
            "words",
            "findings",
            "calculation",
            "papers",
            "network",
            "wiring",
            "model",
            "diagnosis",
            "calls",
            "handover",
            "command",
            "workbench",
            "api",
            "keeping",
            "sites",
            "results",
            "limits",
            "problems",
            "cells",
            "store");

    private final Map<String, String> texts;
    private final Locale locale;
    private final Map<String, MessageFormat> formats = new ConcurrentHashMap<>();

    private Bundle(Map<String, String> texts, Locale locale) {
        this.texts = texts;
        this.locale = locale;
    }

    static Bundle of(Locale locale) {
        Map<String, String> texts = new HashMap<>(1024);
        for (String file : FILES) {
            read(file + ".properties", texts);
            if (!locale.getLanguage().equals("en")) read(file + "_" + locale.getLanguage() + ".properties", texts);
        }
        return new Bundle(texts, locale);
    }

    private static void read(String name, Map<String, String> texts) {
        try (InputStream bytes = Bundle.class.getResourceAsStream(name)) {
            if (bytes == null) return;
            Properties properties = new Properties();
            properties.load(new InputStreamReader(bytes, StandardCharsets.UTF_8));
            properties.forEach((key, text) -> texts.put((String) key, (String) text));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read the texts " + name, e);
        }
    }

    Optional<String> find(String key) {
        return Optional.ofNullable(texts.get(key));
    }

    /** One of the texts with its places filled in. */
    String filled(String text, Object... arguments) {
        // Most texts have no places, and no apostrophe that would have to be written twice.
        if (text.indexOf('{') < 0 && text.indexOf('\'') < 0) return text;
        MessageFormat format = formats.computeIfAbsent(text, pattern -> new MessageFormat(pattern, locale));
        // A format serves one thread at a time.
        synchronized (format) {
            return format.format(arguments);
        }
    }

    /** All texts by key. */
    Map<String, String> texts() {
        return Map.copyOf(texts);
    }
}
