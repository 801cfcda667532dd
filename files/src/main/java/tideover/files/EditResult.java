package tideover.files;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.engine.site.Site;

/** What came of editing a site: another site, or why not. Edits come together or not at all. */
public sealed interface EditResult {

    /**
     * The site with every edit made; the same digest as before where nothing changed.
     *
     * @param canonicalJson of the site, of which the digest is
     */
    record Edited(Site site, String canonicalJson, Digest digest) implements EditResult {}

    /** What stands in the way; {@link InputProblem#field()} is the path of the edit or of the fact. */
    record Refused(List<InputProblem> problems) implements EditResult {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /** Somebody else changed the same facts meanwhile. */
    record Conflicting(List<Conflict> conflicts) implements EditResult {
        public Conflicting {
            conflicts = List.copyOf(conflicts);
        }
    }

    /**
     * One fact that two wanted to change.
     *
     * @param edit what was wanted
     * @param now  what stands there now; nothing where it was taken out
     */
    record Conflict(Edit edit, @Nullable String now) {}
}
