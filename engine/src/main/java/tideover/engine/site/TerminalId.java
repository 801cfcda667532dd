package tideover.engine.site;

/**
 * One control terminal, written {@code port/terminal}, for example {@code switch-coil/A1}.
 *
 * @param port whose terminal
 * @param name the maker's name of it
 */
public record TerminalId(ThingId port, String name) {

    /**
     * Reads {@code port/terminal}.
     *
     * @throws IllegalArgumentException if it is not written so
     */
    public static TerminalId of(String text) {
        if (!isWellFormed(text))
            throw new IllegalArgumentException("terminal '%s' is not port/terminal".formatted(text));
        int slash = text.indexOf('/');
        return new TerminalId(new ThingId(text.substring(0, slash)), text.substring(slash + 1));
    }

    /** Whether a text may serve as one. */
    public static boolean isWellFormed(String text) {
        int slash = text.indexOf('/');
        return slash > 0
                && ThingId.isWellFormed(text.substring(0, slash))
                && !text.substring(slash + 1).isBlank();
    }

    @Override
    public String toString() {
        return port.text() + "/" + name;
    }
}
