package tideover.engine.wiring.model;

/** Lasting names of readings, steps and mistakes are made of the words of the model, the same in every language. */
public final class Ids {

    private Ids() {}

    /** A word of the model in small letters with hyphens, such as {@code earth-current}. */
    public static String of(Enum<?> word) {
        StringBuilder id = new StringBuilder();
        for (char letter : word.name().toCharArray())
            id.append(letter == '_' ? '-' : letter >= 'A' && letter <= 'Z' ? (char) (letter - 'A' + 'a') : letter);
        return id.toString();
    }
}
