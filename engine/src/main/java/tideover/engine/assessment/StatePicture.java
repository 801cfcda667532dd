package tideover.engine.assessment;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.engine.network.Share;
import tideover.engine.network.house.FlowStudy;
import tideover.engine.network.house.HouseFlowResult;
import tideover.engine.network.house.LostNeutral;
import tideover.engine.network.house.Regime;
import tideover.engine.protection.Extreme;
import tideover.engine.protection.FaultCourse;
import tideover.engine.protection.FaultCourses;
import tideover.engine.protection.FaultKind;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;

/**
 * What flows and what a fault does in one operating state: what the studies have to say, gathered for whoever shows it.
 *
 * @param state        which
 * @param sources      what forms a voltage
 * @param drawing      worst credible coincidence of loads; nothing where no source is live or no flow was studied
 * @param feeding      all inverters that follow feeding at most; nothing as before
 * @param shares       why so much is drawn, circuit by circuit and line by line
 * @param lostNeutrals what interrupted neutrals do, the highest voltage first
 * @param faults       faults at the places asked for
 * @param missing      facts without which some of it is not known
 */
public record StatePicture(
        OperatingState state,
        List<ThingId> sources,
        @Nullable HouseFlowResult drawing,
        @Nullable HouseFlowResult feeding,
        List<Share> shares,
        List<LostNeutral> lostNeutrals,
        List<FaultCourse> faults,
        List<FactId> missing) {
    public StatePicture {
        sources = List.copyOf(sources);
        shares = List.copyOf(shares);
        lostNeutrals = List.copyOf(lostNeutrals);
        faults = List.copyOf(faults);
        missing = List.copyOf(missing);
    }

    /**
     * The picture of one state.
     *
     * @param places   where faults are looked at
     * @param faultOhm resistance of the faults, 0 where bolted [Ω]
     */
    public static StatePicture of(Studies studies, OperatingState state, List<? extends Fed> places, double faultOhm) {
        List<ThingId> sources = studies.installation().in(state).sources();
        FlowStudy flow = sources.isEmpty() ? null : studies.flow();
        List<FaultCourse> faults = faults(studies.faults(), state, places, faultOhm);
        Set<FactId> missing = new LinkedHashSet<>();
        if (flow != null) missing.addAll(flow.missing(state));
        for (FaultCourse course : faults) missing.addAll(course.missing());
        return new StatePicture(
                state,
                sources,
                flow == null ? null : flow.flow(state, Regime.DRAWING),
                flow == null ? null : flow.flow(state, Regime.FEEDING),
                flow == null ? List.of() : flow.shares(state),
                flow == null ? List.of() : flow.lostNeutrals(state),
                faults,
                List.copyOf(missing));
    }

    private static List<FaultCourse> faults(
            @Nullable FaultCourses study, OperatingState state, List<? extends Fed> places, double faultOhm) {
        List<FaultCourse> faults = new ArrayList<>();
        if (study == null) return faults;
        for (Fed place : places)
            for (FaultKind kind : FaultKind.values())
                for (Extreme extreme : Extreme.values())
                    faults.addAll(study.courses(kind, place, state, extreme, faultOhm));
        return faults;
    }
}
