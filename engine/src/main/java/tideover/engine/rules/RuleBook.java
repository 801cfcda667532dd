package tideover.engine.rules;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The limits that hold for one site: country over IEC, operator over country, user over all. */
public final class RuleBook {

    private final String country;
    private final List<String> layers;
    private final Map<Topic, Stance> topics;
    private final Map<String, Limit> limits;
    private final Digest digest;

    /**
     * @param country book of the country
     * @param layers  books laid over one another, lowest first
     * @param topics  how the country's book stands to each topic
     * @param limits  what results, by id; those of uncovered topics are left out by the loader
     * @param digest  over the contents of all layers
     */
    public RuleBook(
            String country, List<String> layers, Map<Topic, Stance> topics, Map<String, Limit> limits, Digest digest) {
        this.country = country;
        this.layers = List.copyOf(layers);
        this.topics = Map.copyOf(topics);
        this.limits = Map.copyOf(limits);
        this.digest = digest;
    }

    /** Name of the country's book. */
    public String country() {
        return country;
    }

    /** Names of the books laid over one another, lowest first. */
    public List<String> layers() {
        return layers;
    }

    /** How the country's book stands to a topic; not declared means unknown. */
    public Stance stance(Topic topic) {
        return topics.getOrDefault(topic, Stance.UNKNOWN);
    }

    /** A limit, if the book has it and covers its topic. */
    public Optional<Limit> find(String id) {
        return Optional.ofNullable(limits.get(id));
    }

    /** All limits, by id. */
    public Collection<Limit> limits() {
        return List.copyOf(new TreeMap<>(limits).values());
    }

    /** Digest of the contents of all layers. */
    public Digest digest() {
        return digest;
    }
}
