package tideover.store.database;

/** Text that came from elsewhere, made fit for paper and screen. */
public final class PlainText {
    private PlainText() {}

    /** On one line, without signs that no paper can bear, cut where it is too long. */
    public static String line(String text, int longest) {
        return cut(text.replaceAll("\\p{Cntrl}", " ").strip(), longest);
    }

    /** On several lines; otherwise as {@link #line}. */
    public static String lines(String text, int longest) {
        return cut(
                text.replace("\r\n", "\n")
                        .replaceAll("[\\p{Cntrl}&&[^\n\t]]", " ")
                        .strip(),
                longest);
    }

    private static String cut(String text, int longest) {
        return text.substring(0, Math.min(text.length(), longest));
    }
}
