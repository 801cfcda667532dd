package tideover.engine.rules;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * SHA-256 of something, by which two versions of it are told apart.
 *
 * @param hex 64 lower-case digits
 */
public record Digest(String hex) {

    /** The digest of a text in UTF-8. */
    public static Digest of(String text) {
        return of(text.getBytes(StandardCharsets.UTF_8));
    }

    /** The digest of bytes. */
    public static Digest of(byte[] bytes) {
        try {
            return new Digest(HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(bytes)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** The first twelve digits, for print. */
    public String shortened() {
        return hex.substring(0, 12);
    }
}
