package tideover.web.guard;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Base64;

/** Random text nobody can guess: 256 bits, letters and digits that need no quoting. */
final class Secret {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 32;

    private Secret() {}

    static String random() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    /** Compares in a time that tells nothing of where they differ. */
    static boolean same(String one, String other) {
        return MessageDigest.isEqual(one.getBytes(StandardCharsets.UTF_8), other.getBytes(StandardCharsets.UTF_8));
    }
}
