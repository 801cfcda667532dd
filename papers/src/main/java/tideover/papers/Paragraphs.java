package tideover.papers;

/** Plain text of limited width, broken between words; further lines of a paragraph are indented as far as the first. */
final class Paragraphs {

    /** So that a hundred columns hold it with some air. */
    static final int WIDTH = 98;

    private final StringBuilder text = new StringBuilder();

    /** One paragraph. */
    void add(String indent, String paragraph) {
        String further = " ".repeat(indent.length());
        StringBuilder line = new StringBuilder(indent);
        boolean empty = true;
        for (String word : paragraph.split(" ")) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                text.append(line).append('\n');
                line = new StringBuilder(further);
                empty = true;
            }
            if (!empty) line.append(' ');
            line.append(word);
            empty = false;
        }
        text.append(line).append('\n');
    }

    /** A line that is not broken, such as one of a table. */
    void addUnbroken(String line) {
        text.append(line.stripTrailing()).append('\n');
    }

    /** An empty line. */
    void gap() {
        text.append('\n');
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
