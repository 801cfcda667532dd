package tideover.store.attachment;

import java.util.List;
import tideover.files.InputProblem;

/** What came of a file that was to be attached. */
public sealed interface AttachmentResult {

    /** It is on the disk. */
    record Kept(Attachment attachment) implements AttachmentResult {}

    /** The file cannot be attached; nothing was kept. */
    record Refused(List<InputProblem> problems) implements AttachmentResult {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
