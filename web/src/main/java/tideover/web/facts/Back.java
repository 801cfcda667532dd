package tideover.web.facts;

import jakarta.servlet.http.HttpServletRequest;
import java.net.URI;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;

/** The way back to the page a form came from: only pages of the same site, wherever a form says it came from. */
final class Back {
    /** Nothing that another host, a script or a further header could be made of. */
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9/_.~%?&=#,:+-]*");

    private Back() {}

    /**
     * Where to go on.
     *
     * @param asked   by the form; empty where it says nothing
     * @param address of the site
     */
    static String to(String asked, HttpServletRequest request, String address) {
        if (isOf(asked, address)) return asked;
        String from = path(request.getHeader(HttpHeaders.REFERER));
        return isOf(from, address) ? from : address + "/circuits";
    }

    private static boolean isOf(String path, String address) {
        return (path.equals(address) || path.startsWith(address + "/"))
                && PLAIN.matcher(path).matches()
                && !path.contains("..");
    }

    private static String path(@Nullable String referer) {
        if (referer == null) return "";
        try {
            URI uri = URI.create(referer);
            String query = uri.getRawQuery() == null ? "" : "?" + uri.getRawQuery();
            return uri.getRawPath() == null ? "" : uri.getRawPath() + query;
        } catch (IllegalArgumentException e) {
            return "";
        }
    }
}
