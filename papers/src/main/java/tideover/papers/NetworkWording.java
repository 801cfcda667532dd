package tideover.papers;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.count;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.verbatim;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.network.Share;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.LostNeutral;
import tideover.engine.network.house.SourceLoading;
import tideover.engine.network.house.Unsolved;
import tideover.engine.rules.Unit;
import tideover.engine.site.Conductor;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.ThingId;

/** Words what flows in the house: the same sentence on command line and paper. */
public final class NetworkWording {

    /** Less is nothing anyone would notice [A]. */
    private static final double NOTICEABLE_A = 0.05;

    /** Less is no drop or rise worth a sentence. */
    private static final double NOTICEABLE_RATIO = 1e-4;

    /** Circuits named of a coincidence; the others are counted. */
    private static final int NAMED = 3;

    private final Wording wording;
    private final Installation installation;

    public NetworkWording(Wording wording, Installation installation) {
        this.wording = wording.with(installation);
        this.installation = installation;
    }

    /** What each source gives, and what it cannot. */
    public List<String> sources(HouseFlow flow) {
        List<String> sentences = new ArrayList<>();
        for (SourceLoading loading : flow.sources()) sentences.add(String.join(" ", source(loading)));
        return sentences;
    }

    private List<String> source(SourceLoading loading) {
        if (loading.currentA().largest() < NOTICEABLE_A)
            return List.of(wording.text("network.source.idle", name(loading.source())));
        List<String> said = new ArrayList<>();
        above(loading, said);
        if (said.isEmpty()) said.add(given(loading));
        OvercurrentDevice fuse = installation.supply().mainFuse();
        if (loading.source().equals(ThingId.SUPPLY) && fuse != null && fuse.ratedCurrentA() != null)
            said.add(wording.text("network.source.fuse", name(ThingId.SUPPLY), amount(fuse.ratedCurrentA(), Unit.A)));
        return said;
    }

    private String given(SourceLoading loading) {
        List<String> lines = new ArrayList<>();
        for (Conductor line : installation.lines(loading.source()))
            lines.add(wording.text(
                    "network.source.line", word(line), amount(loading.currentA().of(line), Unit.A)));
        return wording.text(
                loading.powerW() < 0 ? "network.source.takes" : "network.source.gives",
                name(loading.source()),
                verbatim(wording.joined(lines)),
                amount(loading.powerVa(), Unit.VA));
    }

    /** What it cannot give, line by line and in all. */
    private void above(SourceLoading loading, List<String> said) {
        Double limitVa = loading.limitVa();
        if (limitVa != null && loading.powerVa() > limitVa)
            said.add(wording.text(
                    "network.source.aboveTotal",
                    name(loading.source()),
                    amount(loading.powerVa(), Unit.VA),
                    amount(limitVa, Unit.VA)));
        Double limitA = loading.limitA();
        List<String> lines = new ArrayList<>();
        for (Conductor line : installation.lines(loading.source()))
            if (limitA != null && loading.currentA().of(line) > limitA)
                lines.add(wording.text(
                        lines.isEmpty() ? "network.source.aboveFirst" : "network.source.aboveNext",
                        name(loading.source()),
                        word(line),
                        amount(loading.currentA().of(line), Unit.A),
                        amount(limitA, Unit.A)));
        if (!lines.isEmpty()) said.add(wording.text("network.source.above", wording.joined(lines)));
    }

    /** Where the voltage falls most below that of the source; empty where nothing flows. */
    public Optional<String> drop(HouseFlow flow) {
        return flow.places().stream()
                .filter(place -> place.dropRatio() != null && place.dropRatio() > NOTICEABLE_RATIO)
                .max(Comparator.comparingDouble(place -> orZero(place.dropRatio())))
                .map(place -> wording.text(
                        "network.drop",
                        name(place.place()),
                        amount(orZero(place.dropRatio()), Unit.PERCENT),
                        name(place.source())));
    }

    /** Where the voltage stands highest above that of the source; empty where nothing feeds. */
    public Optional<String> rise(HouseFlow feeding) {
        return feeding.places().stream()
                .filter(place -> place.dropRatio() != null && place.dropRatio() < -NOTICEABLE_RATIO)
                .min(Comparator.comparingDouble(place -> orZero(place.dropRatio())))
                .map(place -> wording.text(
                        "network.rise",
                        name(place.place()),
                        amount(-orZero(place.dropRatio()), Unit.PERCENT),
                        name(place.source())));
    }

    /** What is worth a sentence: the neutral, what leaves its conductors, what stands at exposed parts. */
    public List<String> highlights(HouseFlow flow) {
        return new FlowHighlights(wording, flow).sentences();
    }

    /** Of that only what flows and stands where nothing should while all is sound. */
    List<String> astray(HouseFlow flow) {
        return new FlowHighlights(wording, flow).astray();
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }

    /** Why no voltages were found. */
    public String of(Unsolved unsolved) {
        return wording.text(
                "network.unsolved",
                name(unsolved.worst()),
                count(unsolved.iterations()),
                verbatim(small(unsolved.residualA())));
    }

    /** How well it was solved, and what is lost. */
    public String solved(HouseFlow flow) {
        return wording.text(
                "network.solved",
                count(flow.flow().iterations()),
                verbatim(small(flow.flow().residualA())),
                amount(flow.lossW(), Unit.W));
    }

    /** Differences are told by their power of ten. */
    private static String small(double residualA) {
        return String.format(Locale.ROOT, "%.0e A", residualA);
    }

    /**
     * Why so much is drawn on one line of one source.
     *
     * @param shares of that line
     */
    public String coincidence(ThingId source, Conductor line, List<Share> shares) {
        List<Share> largest = shares.stream()
                .sorted((a, b) -> Double.compare(b.addedA(), a.addedA()))
                .toList();
        double sumA = shares.stream().mapToDouble(Share::addedA).sum();
        List<String> parts = new ArrayList<>();
        double othersA = sumA;
        for (Share share : largest.subList(0, Math.min(NAMED, largest.size()))) {
            othersA -= share.addedA();
            parts.add(wording.text(
                    "network.share", name(share.circuit().id()), amount(share.addedA(), Unit.A), word(share.reason())));
        }
        int others = largest.size() - NAMED;
        if (others > 0) parts.add(wording.text("network.share.others", count(others), amount(othersA, Unit.A)));
        return wording.text(
                "network.coincidence", name(source), word(line), amount(sumA, Unit.A), verbatim(wording.joined(parts)));
    }

    /** What an interrupted neutral does. */
    public String of(LostNeutral lost) {
        Double voltageV = lost.voltageV();
        return voltageV == null
                ? wording.text("network.lostNeutral.unsolved", name(lost.thing()), name(lost.place()))
                : wording.text(
                        "network.lostNeutral",
                        name(lost.thing()),
                        name(lost.place()),
                        word(lost.line()),
                        amount(voltageV, Unit.V));
    }
}
