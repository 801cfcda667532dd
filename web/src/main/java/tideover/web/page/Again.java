package tideover.web.page;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.springframework.http.MediaType;

/**
 * A form as it was sent: going back would not bring what was typed, since browsers keep nothing of pages that must not be
 * stored.
 *
 * @param address where it was sent
 * @param fields  what was in it, in its order, but for the form token
 */
public record Again(String address, List<Field> fields) {
    private static final String FORM_TOKEN = "_csrf";

    public Again {
        fields = List.copyOf(fields);
    }

    /** One field of a form. */
    public record Field(String name, String value) {}

    /** The form of a request; nothing where there was none, or one with files. */
    static @Nullable Again of(HttpServletRequest request) {
        String type = request.getContentType();
        if (type == null || !type.startsWith(MediaType.APPLICATION_FORM_URLENCODED_VALUE)) return null;
        List<Field> fields = new ArrayList<>();
        for (Map.Entry<String, String[]> each : request.getParameterMap().entrySet())
            if (!each.getKey().equals(FORM_TOKEN))
                Arrays.stream(each.getValue())
                        .map(value -> new Field(each.getKey(), value))
                        .forEach(fields::add);
        return new Again(request.getRequestURI(), fields);
    }
}
