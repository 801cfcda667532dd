package tideover.web.findings;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Topic;
import tideover.engine.site.ThingId;

/**
 * Which findings an address asks for; a part that is missing, or that no finding has, restricts nothing.
 *
 * @param show  a group
 * @param force how binding
 * @param topic what about
 * @param place at which thing
 */
record Asked(
        @Nullable Shown show,
        @Nullable Force force,
        @Nullable Topic topic,
        @Nullable ThingId place) {
    static final Asked ALL = new Asked(null, null, null, null);

    static Asked of(HttpServletRequest request) {
        String place = text(request, "place");
        return new Asked(
                Shown.find(text(request, "show")).orElse(null),
                findForce(text(request, "force")).orElse(null),
                findTopic(text(request, "topic")).orElse(null),
                ThingId.isWellFormed(place) ? new ThingId(place) : null);
    }

    private static String text(HttpServletRequest request, String name) {
        String text = request.getParameter(name);
        return text == null ? "" : text;
    }

    private static Optional<Force> findForce(String word) {
        return Arrays.stream(Force.values())
                .filter(force -> path(force).equals(word))
                .findFirst();
    }

    private static Optional<Topic> findTopic(String word) {
        return Arrays.stream(Topic.values())
                .filter(topic -> topic.word().equals(word))
                .findFirst();
    }

    static String path(Force force) {
        return force.name().toLowerCase(Locale.ROOT);
    }

    Asked with(@Nullable Shown other) {
        return new Asked(other, force, topic, place);
    }

    Asked with(@Nullable Force other) {
        return new Asked(show, other, topic, place);
    }

    Asked with(@Nullable Topic other) {
        return new Asked(show, force, other, place);
    }

    Asked with(@Nullable ThingId other) {
        return new Asked(show, force, topic, other);
    }

    boolean isAll() {
        return equals(ALL);
    }

    /** Whether a finding is asked for, whatever its group. */
    boolean concerns(Finding finding) {
        return (force == null || finding.force() == force)
                && (topic == null || topic == topicOf(finding).orElse(null))
                && (place == null || finding.key().place().equals(place));
    }

    static Optional<Topic> topicOf(Finding finding) {
        return Topic.findByLimit(finding.key().check());
    }

    /** What stands behind the address of the page; empty where nothing is restricted. */
    String query() {
        StringBuilder query = new StringBuilder();
        add(query, "show", show == null ? null : show.path());
        add(query, "force", force == null ? null : path(force));
        add(query, "topic", topic == null ? null : topic.word());
        add(query, "place", place == null ? null : place.text());
        return query.toString();
    }

    /** Words and ids need no quoting. */
    private static void add(StringBuilder query, String name, @Nullable String value) {
        if (value != null)
            query.append(query.isEmpty() ? '?' : '&').append(name).append('=').append(value);
    }
}
