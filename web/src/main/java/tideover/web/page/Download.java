package tideover.web.page;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;

/** Answers that are saved as files and never shown as pages of ours. */
public final class Download {
    private static final int LONGEST_NAME = 60;

    private Download() {}

    /**
     * A file.
     *
     * @param name under which it is saved, of letters, digits, hyphens and dots
     */
    public static ResponseEntity<byte[]> of(MediaType type, String name, byte[] bytes) {
        return ResponseEntity.ok()
                .contentType(type)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.attachment().filename(name).build().toString())
                .header(HttpHeaders.CACHE_CONTROL, "no-store")
                .body(bytes);
    }

    /**
     * A text file in UTF-8.
     *
     * @param name under which it is saved
     */
    public static ResponseEntity<byte[]> text(MediaType type, String name, String text) {
        return of(type, name, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * A text as a name that every system can save under: letters without accents, digits and hyphens.
     *
     * @param otherwise where nothing of the text is left
     */
    public static String name(String text, String otherwise) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String kept = plain.substring(0, Math.min(plain.length(), LONGEST_NAME));
        return kept.isEmpty() ? otherwise : kept;
    }
}
