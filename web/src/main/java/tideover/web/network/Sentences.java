package tideover.web.network;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.assessment.StatePicture;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.network.Share;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.HouseFlowResult;
import tideover.engine.network.house.SourceLoading;
import tideover.engine.network.house.Unsolved;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;
import tideover.papers.NetworkWording;
import tideover.papers.Wording;

/** What flows, in sentences. */
final class Sentences {
    private static final int LOST_NEUTRALS = 2;
    private static final int NAMED = 6;

    /** Less is nothing anyone would notice [A]. */
    private static final double NOTICEABLE_A = 0.05;

    private final Installation installation;
    private final OperatingState state;
    private final Wording words;
    private final NetworkWording flows;

    Sentences(Installation installation, OperatingState state, Wording words) {
        this.installation = installation;
        this.state = state;
        this.words = words;
        this.flows = new NetworkWording(words, installation);
    }

    /**
     * The most important first.
     *
     * @param result of the loads that are on
     * @param shares why they draw so much
     */
    List<String> of(HouseFlowResult result, List<Share> shares, StatePicture picture) {
        if (result instanceof Unsolved unsolved) return List.of(flows.of(unsolved));
        HouseFlow flow = (HouseFlow) result;
        List<String> all = new ArrayList<>(flows.sources(flow));
        all.addAll(coincidence(shares));
        flows.drop(flow).ifPresent(all::add);
        if (picture.feeding() instanceof HouseFlow feeding) flows.rise(feeding).ifPresent(all::add);
        all.addAll(flows.highlights(flow));
        picture.lostNeutrals().stream().limit(LOST_NEUTRALS).forEach(lost -> all.add(flows.of(lost)));
        all.add(flows.solved(flow));
        return all.stream().map(words::capitalised).toList();
    }

    private List<String> coincidence(List<Share> shares) {
        View view = installation.in(state);
        Map<ThingId, Map<Conductor, List<Share>>> groups = new LinkedHashMap<>();
        for (Share share : shares)
            view.findSource(share.circuit())
                    .ifPresent(source -> groups.computeIfAbsent(source, s -> new EnumMap<>(Conductor.class))
                            .computeIfAbsent(share.line(), line -> new ArrayList<>())
                            .add(share));
        List<String> sentences = new ArrayList<>();
        groups.forEach(
                (source, lines) -> lines.forEach((line, of) -> sentences.add(flows.coincidence(source, line, of))));
        return sentences;
    }

    /** What turning some circuits off changes, line by line. */
    List<String> change(List<Circuit> off, HouseFlowResult before, HouseFlowResult after) {
        List<String> sentences = new ArrayList<>();
        sentences.add(off.isEmpty() ? words.text("network.off.none") : words.text("network.off", names(off)));
        if (!(before instanceof HouseFlow was) || !(after instanceof HouseFlow is)) return sentences;
        Map<ThingId, SourceLoading> now = new LinkedHashMap<>();
        for (SourceLoading loading : is.sources()) now.put(loading.source(), loading);
        for (SourceLoading loading : was.sources()) {
            SourceLoading then = now.get(loading.source());
            if (then == null) continue;
            for (Conductor line : installation.lines(loading.source())) {
                double wasA = loading.currentA().of(line);
                double isA = then.currentA().of(line);
                if (Math.abs(wasA - isA) >= NOTICEABLE_A)
                    sentences.add(words.text(
                            isA < wasA ? "network.off.falls" : "network.off.rises",
                            PhraseArg.name(loading.source()),
                            PhraseArg.word(line),
                            PhraseArg.amount(wasA, Unit.A),
                            PhraseArg.amount(isA, Unit.A)));
            }
        }
        return sentences;
    }

    private String names(List<Circuit> circuits) {
        List<String> names = new ArrayList<>(circuits.stream()
                .limit(NAMED)
                .map(circuit -> words.name(circuit.id()))
                .toList());
        int others = circuits.size() - names.size();
        if (others > 0) names.add(words.text("live.others", PhraseArg.count(others)));
        return words.joined(names);
    }
}
