package tideover.files;

import java.util.List;
import tideover.engine.rules.Digest;
import tideover.engine.site.Site;

/** What became of a site file. */
public sealed interface SiteFileResult {
    /**
     * The file is sound.
     *
     * @param digest of the site's canonical JSON
     */
    record Readable(Site site, Digest digest) implements SiteFileResult {}

    /**
     * The file has problems; nothing was built from it.
     *
     * @param problems all of them, in the order of the file; at least one
     */
    record Refused(List<InputProblem> problems) implements SiteFileResult {
        public Refused {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) throw new IllegalArgumentException("refused without a problem");
        }
    }
}
