package tideover.web.api;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import tideover.store.attachment.Attachments;

/** The file that is the body of a request. */
final class SentFile {
    private SentFile() {}

    /** All of it, or one byte more than is ever kept: then whoever keeps it says that it is too large. */
    static byte[] read(HttpServletRequest request) throws IOException {
        return request.getInputStream().readNBytes(Attachments.LARGEST_BYTES + 1);
    }
}
