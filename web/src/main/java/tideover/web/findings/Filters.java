package tideover.web.findings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Force;
import tideover.engine.rules.Topic;
import tideover.engine.site.ThingId;
import tideover.papers.Wording;
import tideover.web.findings.FindingsSheet.Choice;
import tideover.web.findings.FindingsSheet.Filter;
import tideover.web.work.Work;

/** Ways to ask for fewer findings, each a link that keeps what else is asked for; what no finding has is left out. */
final class Filters {
    private final Work work;
    private final Wording words;

    Filters(Work work, Wording words) {
        this.work = work;
        this.words = words;
    }

    List<Filter> of(List<Finding> findings, Asked asked) {
        Counter<Shown> shown = new Counter<>(new EnumMap<>(Shown.class));
        Counter<Force> forces = new Counter<>(new EnumMap<>(Force.class));
        Counter<Topic> topics = new Counter<>(new EnumMap<>(Topic.class));
        Counter<ThingId> places = new Counter<>(new HashMap<>());
        for (Finding finding : findings) {
            Shown group = Shown.of(finding);
            boolean isShown = asked.show() == null || asked.show() == group;
            if (asked.with((Shown) null).concerns(finding)) shown.add(group);
            if (isShown && asked.with((Force) null).concerns(finding)) forces.add(finding.force());
            if (isShown && asked.with((Topic) null).concerns(finding))
                Asked.topicOf(finding).ifPresent(topics::add);
            if (isShown && asked.with((ThingId) null).concerns(finding))
                places.add(finding.key().place());
        }
        return List.of(byGroup(shown, asked), byForce(forces, asked), byTopic(topics, asked), byPlace(places, asked));
    }

    private Filter byGroup(Counter<Shown> counts, Asked asked) {
        Links links = new Links(asked.with((Shown) null), asked.show() == null, counts.sum());
        for (Shown group : Shown.values())
            links.add(FindingsSheets.heading(group, words), counts.of(group), asked.with(group), asked.show() == group);
        return links.filter("findings.filter.show");
    }

    private Filter byForce(Counter<Force> counts, Asked asked) {
        Links links = new Links(asked.with((Force) null), asked.force() == null, counts.sum());
        for (Force force : Force.values())
            links.add(words.heading(force), counts.of(force), asked.with(force), asked.force() == force);
        return links.filter("findings.filter.force");
    }

    private Filter byTopic(Counter<Topic> counts, Asked asked) {
        Links links = new Links(asked.with((Topic) null), asked.topic() == null, counts.sum());
        for (Topic topic : Topic.values())
            links.add(words.heading(topic), counts.of(topic), asked.with(topic), asked.topic() == topic);
        return links.filter("findings.filter.topic");
    }

    private Filter byPlace(Counter<ThingId> counts, Asked asked) {
        Links links = new Links(asked.with((ThingId) null), asked.place() == null, counts.sum());
        Map<String, ThingId> byName = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        for (ThingId place : counts.counts().keySet()) byName.put(words.name(place) + " " + place.text(), place);
        for (ThingId place : byName.values())
            links.add(
                    words.capitalised(words.name(place)),
                    counts.of(place),
                    asked.with(place),
                    place.equals(asked.place()));
        return links.filter("findings.filter.place");
    }

    /** Counts by what is counted. */
    private record Counter<K>(Map<K, Integer> counts) {
        void add(K key) {
            counts.merge(key, 1, Integer::sum);
        }

        int of(K key) {
            return counts.getOrDefault(key, 0);
        }

        int sum() {
            return counts.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    /** The links of one filter. */
    private final class Links {
        private final List<Choice> choices = new ArrayList<>();

        Links(Asked all, boolean isHere, int count) {
            choices.add(choice(words.text("findings.filter.all"), count, all, isHere));
        }

        void add(String name, int count, Asked asked, boolean isHere) {
            if (count > 0 || isHere) choices.add(choice(name, count, asked, isHere));
        }

        private Choice choice(String name, int count, Asked asked, boolean isHere) {
            String address = work.address() + FindingsSheets.PAGE + asked.query();
            return new Choice(name, count, address, isHere ? "here" : "");
        }

        Filter filter(String key) {
            return new Filter(words.text(key), choices);
        }
    }
}
