package tideover.engine.wiring.mistake;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.wiring.model.Hazard;
import tideover.engine.wiring.model.HazardSearch;
import tideover.engine.wiring.model.HazardSearch.When;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.procedure.Run;
import tideover.engine.wiring.procedure.Step;

/** Which step reveals which mistake. */
public final class Coverage {

    /** Is told how far it is; whoever wants it to end throws. */
    public interface Progress {
        /** Nobody asks. */
        Progress NOT_TOLD = (tried, all) -> {};

        /** So many of all mistakes are tried out. */
        void tried(int tried, int all);
    }

    private final Run run;
    private final List<Mistake> mistakes;
    private final List<BitSet> revealedBy = new ArrayList<>();
    private final BitSet demanded = new BitSet();
    private final BitSet seen = new BitSet();
    private @Nullable Set<Hazard> healthyHazards;

    private Coverage(Run run, List<Mistake> mistakes, Progress progress) {
        this.run = run;
        this.mistakes = List.copyOf(mistakes);
        List<Step> steps = run.procedure().steps();
        for (Step step : steps) if (step.name().isDemanded()) demanded.set(step.index());
        byte[] healthy = run.expectations();
        for (Mistake mistake : mistakes) {
            byte[] readings = run.readings(mistake.defect());
            BitSet revealing = run.revealing(readings);
            if (!Arrays.equals(readings, healthy)) seen.set(mistake.index());
            revealedBy.add(revealing);
            progress.tried(revealedBy.size(), mistakes.size());
        }
    }

    /** Runs every step with every mistake. */
    public static Coverage of(Run run, List<Mistake> mistakes) {
        return of(run, mistakes, Progress.NOT_TOLD);
    }

    /** The same, told how far it is. */
    public static Coverage of(Run run, List<Mistake> mistakes, Progress progress) {
        return new Coverage(run, mistakes, progress);
    }

    /** The mistakes, in their own order. */
    public List<Mistake> mistakes() {
        return mistakes;
    }

    /** Steps that reveal a mistake. */
    public List<Step> revealing(Mistake mistake) {
        List<Step> steps = new ArrayList<>();
        BitSet set = revealedBy.get(mistake.index());
        for (int i = set.nextSetBit(0); i >= 0; i = set.nextSetBit(i + 1))
            steps.add(run.procedure().steps().get(i));
        return steps;
    }

    /** Whether a demanded step reveals it. */
    public boolean isRevealed(Mistake mistake) {
        return revealedBy.get(mistake.index()).intersects(demanded);
    }

    /** Whether anything that can be read changes. */
    public boolean isVisible(Mistake mistake) {
        return seen.get(mistake.index());
    }

    /** Mistakes that no demanded step reveals. */
    public List<Mistake> hidden() {
        return mistakes.stream().filter(mistake -> !isRevealed(mistake)).toList();
    }

    /** The smallest set of further steps that reveal all that further steps can reveal and demanded ones do not. */
    public List<Step> smallestAddition() {
        List<Step> further = run.procedure().steps().stream()
                .filter(step -> !step.name().isDemanded())
                .toList();
        BitSet universe = new BitSet();
        List<BitSet> sets = new ArrayList<>();
        for (int i = 0; i < further.size(); i++) sets.add(new BitSet());
        for (Mistake mistake : hidden()) {
            universe.set(mistake.index());
            for (int i = 0; i < further.size(); i++)
                if (revealedBy.get(mistake.index()).get(further.get(i).index()))
                    sets.get(i).set(mistake.index());
        }
        return SmallestCover.of(sets, universe).stream().map(further::get).toList();
    }

    /** Hazards that a mistake brings about in service, none of which the healthy house has. */
    public Set<Hazard> hazards(Mistake mistake) {
        HouseModel model = run.procedure().model();
        Set<Hazard> healthy = healthyHazards;
        if (healthy == null)
            healthyHazards = healthy =
                    Set.copyOf(HazardSearch.search(model, tideover.engine.wiring.model.Defect.NONE, When.AT_REST)
                            .exposures()
                            .keySet());
        Set<Hazard> found = EnumSet.noneOf(Hazard.class);
        found.addAll(HazardSearch.search(model, mistake.defect(), When.AT_REST)
                .exposures()
                .keySet());
        found.removeAll(healthy);
        return found;
    }

    /** Why nothing that can be read changes. @throws IllegalArgumentException if something does */
    public Unseen reason(Mistake mistake) {
        if (isVisible(mistake)) throw new IllegalArgumentException(mistake.id() + " can be seen");
        HouseModel model = run.procedure().model();
        return switch (mistake.kind()) {
            case CORE_TO_EARTH -> Unseen.NOT_EARTHED;
            case CORES_EXCHANGED, WRONG_NUMBER -> exchanged(mistake);
            case CORE_OPEN, CORES_TOUCHING, CORE_TO_PLUS, CORE_TO_REFERENCE, CORE_TO_LINE ->
                model.sameControlNets(mistake.defect()) ? Unseen.SAME_NET : Unseen.NO_DIFFERENCE;
            case WRONG_NEUTRAL_BAR, MEASURING_NEUTRAL_MOVED, OPEN, TOUCHING, SECOND_LINK, LINK_MISSING ->
                model.samePowerNets(mistake.defect()) ? Unseen.SAME_NET : Unseen.NO_DIFFERENCE;
            case ROTATED, EXCHANGED -> Unseen.SAME_SEQUENCE;
            case MEASURING_NEUTRAL_OPEN,
                    WRONG_SENSE,
                    SETTINGS_EXCHANGED,
                    ADDRESS_TWICE,
                    ADDRESS_WRONG,
                    RATE_WRONG,
                    RESISTOR_MISSING,
                    RESISTOR_EXTRA,
                    UNMOVED,
                    WELDED,
                    INTERRUPTED,
                    SUPPLY_LOST -> Unseen.NO_DIFFERENCE;
        };
    }

    private Unseen exchanged(Mistake mistake) {
        HouseModel model = run.procedure().model();
        if (model.sameControlNets(mistake.defect())) return Unseen.SAME_NET;
        return model.isOneElement(mistake.defect()) ? Unseen.EITHER_WAY : Unseen.SERIES_ORDER;
    }
}
