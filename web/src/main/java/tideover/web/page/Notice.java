package tideover.web.page;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A page that says one thing.
 *
 * @param heading   what it is about
 * @param sentences what is so, and how to go on
 * @param way       address of the way on; nothing where there is none
 */
public record Notice(
        Frame frame,
        String heading,
        List<String> sentences,
        @Nullable String way) {
    public Notice {
        sentences = List.copyOf(sentences);
    }

    /** A notice worded in the bundle. */
    public static Notice of(Frame frame, String headingKey, String textKey, String... filled) {
        return new Notice(
                frame, frame.words().text(headingKey), List.of(frame.words().text(textKey, filled)), null);
    }
}
