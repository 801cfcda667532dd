package tideover.web.edit;

import java.util.List;
import tideover.files.Field;
import tideover.files.FieldTable;
import tideover.papers.Wording;

/** What stands in a cell or field, in the reader's way of writing. */
public final class CellText {
    private final FieldTable fields;
    private final Wording words;

    public CellText(FieldTable fields, Wording words) {
        this.fields = fields;
        this.words = words;
    }

    /**
     * A value as it is read and typed.
     *
     * @param field row of the field table, such as {@code circuits.cable.lengthM}
     * @param value as edits name it
     */
    public String of(String field, String value) {
        return value;
    }

    /** Whether only certain words may be typed. */
    public boolean hasWords(String field) {
        return false;
    }

    /** The words that may be typed; none where anything may. */
    public List<String> wordsOf(String field) {
        return List.of();
    }

    Field field(String path) {
        return fields.find(path).orElseThrow();
    }

    Wording words() {
        return words;
    }
}
