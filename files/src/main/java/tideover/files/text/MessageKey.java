package tideover.files.text;

/** Where the sentence for a constant stands in the bundles. */
public final class MessageKey {
    private MessageKey() {}

    /**
     * Such as {@code problem.noLine} for {@code NO_LINE}.
     *
     * @param prefix with its last dot
     */
    public static String of(String prefix, Enum<?> word) {
        StringBuilder key = new StringBuilder(prefix);
        boolean capital = false;
        for (char letter : word.name().toCharArray()) {
            if (letter != '_') key.append(capital ? letter : Character.toLowerCase(letter));
            capital = letter == '_';
        }
        return key.toString();
    }
}
