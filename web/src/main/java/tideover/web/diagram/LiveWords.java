package tideover.web.diagram;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.Circuit;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;
import tideover.papers.Wording;

/** What has voltage in a state and what has not, in sentences that a customer can repeat. */
public final class LiveWords {
    /** More names than these are counted. */
    private static final int NAMED = 12;

    private LiveWords() {}

    /** The sources, what they feed, and what is dark. */
    public static List<String> of(Installation installation, OperatingState state, Wording words) {
        View view = installation.in(state);
        List<String> sentences = new ArrayList<>();
        sentences.add(
                view.sources().isEmpty()
                        ? words.text("live.nothing")
                        : words.text("live.sources", PhraseArg.names(view.sources())));
        List<ThingId> live = new ArrayList<>();
        List<ThingId> dark = new ArrayList<>();
        for (Circuit circuit : installation.circuits())
            (view.liveLines(circuit).isEmpty() ? dark : live).add(circuit.id());
        if (!live.isEmpty()) sentences.add(told("live.circuits", live, words));
        if (!dark.isEmpty()) sentences.add(told("live.dark", dark, words));
        return sentences;
    }

    private static String told(String key, List<ThingId> circuits, Wording words) {
        List<String> named =
                new ArrayList<>(circuits.stream().limit(NAMED).map(words::name).toList());
        int others = circuits.size() - named.size();
        if (others > 0) named.add(words.text("live.others", PhraseArg.count(others)));
        return words.text(key, PhraseArg.count(circuits.size()), PhraseArg.verbatim(words.joined(named)));
    }
}
