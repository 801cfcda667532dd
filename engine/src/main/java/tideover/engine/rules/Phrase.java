package tideover.engine.rules;

import java.util.List;

/**
 * A sentence not yet worded.
 *
 * @param key       in the message bundles
 * @param arguments filled into the places {0}, {1} …
 */
public record Phrase(String key, List<PhraseArg> arguments) {
    public Phrase {
        arguments = List.copyOf(arguments);
    }

    public static Phrase of(String key, PhraseArg... arguments) {
        return new Phrase(key, List.of(arguments));
    }
}
