package tideover.web.edit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tideover.engine.site.Site;
import tideover.files.Edit;
import tideover.papers.Wording;
import tideover.web.edit.Outcome.Problem;

/** From what a person wrote to edits, and back. */
@Component
public final class TypedValues {

    /** Adds the edits that a typed value stands for, or what is wrong with it. */
    void read(Site site, Typed value, Wording words, List<Edit> edits, List<Problem> problems) {
        edits.add(new Edit(
                value.path(), orNothing(value.was()), orNothing(value.typed().strip())));
    }

    /** What a fact is called. */
    String label(String path, Wording words) {
        return path;
    }

    /** A value as it is read. */
    String text(String path, String value, Wording words) {
        return value;
    }

    private static @Nullable String orNothing(String text) {
        return text.isEmpty() ? null : text;
    }
}
