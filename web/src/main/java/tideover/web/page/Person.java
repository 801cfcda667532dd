package tideover.web.page;

import org.springframework.security.authentication.AnonymousAuthenticationToken;
import org.springframework.security.core.Authentication;
import org.springframework.security.core.context.SecurityContextHolder;

/** Who asks. */
public final class Person {
    private Person() {}

    /** Whether the one who asks was let in. */
    public static boolean isLetIn() {
        Authentication who = SecurityContextHolder.getContext().getAuthentication();
        return who != null && !(who instanceof AnonymousAuthenticationToken);
    }
}
