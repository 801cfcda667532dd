package tideover.store.site;

import java.util.List;
import tideover.files.InputProblem;

/** What came of a site file that was to be kept. */
public sealed interface ImportResult {

    /** It is on the disk. */
    record Imported(StoredSite head) implements ImportResult {}

    /** The file has problems: all of them, and nothing was kept. */
    record Refused(List<InputProblem> problems) implements ImportResult {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
