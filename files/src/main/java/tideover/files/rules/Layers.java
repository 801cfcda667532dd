package tideover.files.rules;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tideover.engine.rules.Digest;
import tideover.engine.rules.Limit;
import tideover.engine.rules.RuleBook;
import tideover.engine.rules.Stance;
import tideover.engine.rules.Topic;

/** Lays books over one another. */
final class Layers {

    private final Book lowest;
    private final String country;
    private final List<String> names = new ArrayList<>();
    private final Map<Topic, Stance> topics = new EnumMap<>(Topic.class);
    private final Map<String, Limit> limits = new TreeMap<>();
    private final StringBuilder digests = new StringBuilder();

    /** Begins with nothing covered: IEC does not hold by silence, not even in a country without a book. */
    Layers(Book lowest, String country) {
        this.lowest = lowest;
        this.country = country;
        names.add(lowest.name());
        digests.append(lowest.digest().hex()).append('\n');
        for (Topic topic : Topic.values()) topics.put(topic, Stance.UNKNOWN);
    }

    /** Lays a book over those laid so far. */
    void lay(Book book) {
        book.topics().forEach((topic, stance) -> {
            switch (stance) {
                case OWN, AS_IEC -> {
                    // IEC lies under a country; under an operator or a user lies what the country made of it.
                    if (stance == Stance.AS_IEC || topics.get(topic) == Stance.UNKNOWN) takeFromLowest(topic);
                }
                case ASK_OPERATOR, UNKNOWN -> limits.values().removeIf(limit -> belongs(limit, topic));
            }
            topics.put(topic, stance);
        });
        for (Limit limit : book.limits()) {
            limits.put(limit.id(), limit);
            Topic topic = topic(limit);
            // An operator's answer covers the topic that was left to it.
            if (!book.topics().containsKey(topic)) topics.put(topic, Stance.OWN);
        }
        if (book.name().equals(lowest.name())) return;
        names.add(book.name());
        digests.append(book.digest().hex()).append('\n');
    }

    RuleBook toRuleBook() {
        return new RuleBook(country, names, topics, limits, Digest.of(digests.toString()));
    }

    /** Whether a book of this name was laid, or is that of the country. */
    boolean has(String name) {
        return names.contains(name) || country.equals(name);
    }

    private void takeFromLowest(Topic topic) {
        limits.values().removeIf(limit -> belongs(limit, topic));
        for (Limit limit : lowest.limits()) if (belongs(limit, topic)) limits.put(limit.id(), limit);
    }

    private static boolean belongs(Limit limit, Topic topic) {
        return topic(limit) == topic;
    }

    private static Topic topic(Limit limit) {
        return Topic.findByLimit(limit.id())
                .orElseThrow(() -> new IllegalStateException("limit %s has no topic".formatted(limit.id())));
    }
}
