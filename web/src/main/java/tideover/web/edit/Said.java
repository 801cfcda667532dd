package tideover.web.edit;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.FactSource;
import tideover.engine.site.Origin;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Who says what a form sends: {@code origin}, {@code by}, {@code on} and {@code document}. It goes for every fact that the
 * form changes, and for those that it only {@link #confirmed confirms}.
 *
 * @param origin    nothing: in the way in which one gets such a fact
 * @param by        person or instrument; empty where nobody said
 * @param on        day, as a date field sends it; empty where nobody said
 * @param document  paper or photo; empty where nobody said
 * @param confirmed facts of which only that is said, and what was said of them when the form was shown
 */
public record Said(@Nullable Origin origin, String by, String on, String document, Map<String, String> confirmed) {
    /** Nothing was said. */
    public static final Said NOTHING = new Said(null, "", "", "", Map.of());

    private static final JsonMapper JSON = new JsonMapper();

    public Said {
        confirmed = Map.copyOf(confirmed);
    }

    /**
     * What a form says. Facts to be confirmed stand in fields {@code confirm}, each with what was said of it before in
     * {@code said.} and its name.
     */
    public static Said of(HttpServletRequest request) {
        Map<String, String> confirmed = new LinkedHashMap<>();
        String[] facts = request.getParameterValues("confirm");
        if (facts != null) for (String fact : facts) confirmed.put(fact, text(request, "said." + fact));
        String origin = text(request, "origin");
        return new Said(
                Arrays.stream(Origin.values())
                        .filter(one -> one.name().equals(origin))
                        .findFirst()
                        .orElse(null),
                text(request, "by"),
                text(request, "on"),
                text(request, "document"),
                confirmed);
    }

    private static String text(HttpServletRequest request, String name) {
        String text = request.getParameter(name);
        return text == null ? "" : text.strip();
    }

    /** Whether the form says nothing about it. */
    boolean isNothing() {
        return origin == null && by.isEmpty() && on.isEmpty() && document.isEmpty();
    }

    /** As an edit has it. */
    String evidence(FactSource source) {
        ObjectNode evidence = JSON.createObjectNode();
        evidence.put("origin", (origin == null ? Provenance.origin(source) : origin).name());
        put(evidence, "by", by);
        put(evidence, "on", on);
        put(evidence, "document", document);
        return evidence.toString();
    }

    private static void put(ObjectNode evidence, String name, String text) {
        if (!text.isEmpty()) evidence.put(name, text);
    }
}
