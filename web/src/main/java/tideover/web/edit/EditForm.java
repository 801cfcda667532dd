package tideover.web.edit;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;

/** Edits as a form sends them: {@code path}, {@code was} and {@code typed} for each, in step. */
public final class EditForm {
    private EditForm() {}

    /** What the form says; a field of which the page shows the same text again is left as it is. */
    public static List<Typed> of(HttpServletRequest request) {
        String[] paths = values(request, "path");
        String[] before = values(request, "was");
        String[] typed = values(request, "typed");
        // What the field showed, where that is another text than the value itself.
        String[] shown = values(request, "shown");
        List<Typed> all = new ArrayList<>();
        for (int i = 0; i < Math.min(paths.length, Math.min(before.length, typed.length)); i++)
            if (i >= shown.length || !shown[i].equals(typed[i])) all.add(new Typed(paths[i], before[i], typed[i]));
        return all;
    }

    private static String[] values(HttpServletRequest request, String name) {
        String[] values = request.getParameterValues(name);
        return values == null ? new String[0] : values;
    }
}
