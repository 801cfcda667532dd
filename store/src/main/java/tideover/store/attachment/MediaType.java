package tideover.store.attachment;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What may be attached. */
public enum MediaType {
    JPEG("image/jpeg", "jpg", "jpg jpeg jpe jfif"),
    PNG("image/png", "png", "png"),
    WEBP("image/webp", "webp", "webp"),
    PDF("application/pdf", "pdf", "pdf");

    private final String text;
    private final String extension;
    private final String extensions;

    MediaType(String text, String extension, String extensions) {
        this.text = text;
        this.extension = extension;
        this.extensions = extensions;
    }

    /** As in a header of HTTP. */
    public String text() {
        return text;
    }

    /** The usual ending of a file name, without the dot. */
    public String extension() {
        return extension;
    }

    /** Whether a file name may end so. */
    boolean hasExtension(String ending) {
        return List.of(extensions.split(" ")).contains(ending.toLowerCase(Locale.ROOT));
    }

    /** By what the content begins with; the name of a file is not asked. */
    static Optional<MediaType> findOf(byte[] content) {
        if (startsWith(content, 0, "\u00FF\u00D8\u00FF")) return Optional.of(JPEG);
        if (startsWith(content, 0, "\u0089PNG\r\n\u001A\n")) return Optional.of(PNG);
        if (startsWith(content, 0, "RIFF") && startsWith(content, 8, "WEBP")) return Optional.of(WEBP);
        return startsWith(content, 0, "%PDF-") ? Optional.of(PDF) : Optional.empty();
    }

    /** Photos as some telephones take them, which many programs cannot show. */
    static boolean isHeic(byte[] content) {
        return startsWith(content, 4, "ftyphei") || startsWith(content, 4, "ftypmif1");
    }

    private static boolean startsWith(byte[] content, int at, String wanted) {
        byte[] bytes = wanted.getBytes(StandardCharsets.ISO_8859_1);
        if (content.length < at + bytes.length) return false;
        for (int i = 0; i < bytes.length; i++) if (content[at + i] != bytes[i]) return false;
        return true;
    }
}
