package tideover.web.jobs;

import java.nio.charset.StandardCharsets;
import org.springframework.http.MediaType;

/** A file that long work made. */
public final class JobFile {
    /** Tables for other programs. */
    public static final MediaType CSV = MediaType.parseMediaType("text/csv;charset=UTF-8");

    private final String name;
    private final MediaType type;
    private final byte[] bytes;

    private JobFile(String name, MediaType type, byte[] bytes) {
        this.name = name;
        this.type = type;
        this.bytes = bytes;
    }

    /** A file of bytes, which the caller gives away. */
    public static JobFile of(String name, MediaType type, byte[] bytes) {
        return new JobFile(name, type, bytes);
    }

    /** A text file in UTF-8. */
    public static JobFile text(String name, MediaType type, String text) {
        return new JobFile(name, type, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Under which it is saved: letters, digits, hyphens and dots. */
    public String name() {
        return name;
    }

    public MediaType type() {
        return type;
    }

    /** What is in it; not to be changed. */
    public byte[] bytes() {
        return bytes;
    }

    int size() {
        return bytes.length;
    }
}
