package tideover.engine.wiring.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * All states a house can reach from service, and the ways between: the grid comes and goes, energy runs out and returns,
 * the by-pass is worked, a lock-out is reset, at rest and, where asked, in the midst of a changeover. Says for each hazard
 * the longest time it lasts without interruption.
 */
public final class HazardSearch {

    /** Moments after which a search is given up; no house of the examples needs a tenth of it. */
    private static final int MOST_MOMENTS = 20_000;

    /** What lasts so long stays, for all that a limit could say: each allows a fraction of a second [s]. */
    private static final double STAYS_S = 2;

    /** While only states at rest count, how long something has lasted tells nothing. */
    private static final double[] NOTHING_LASTED = {};

    private HazardSearch() {}

    /** When something may happen. */
    public enum When {
        /** Only while everything is at rest or the grid is observed. */
        AT_REST,
        /** After any event, also in the midst of a changeover. */
        ANY_TIME
    }

    /** Something that happens. */
    public enum Happening {
        GRID_LOST,
        GRID_BACK,
        ENERGY_GONE,
        ENERGY_BACK,
        BY_PASS_CLOSED,
        BY_PASS_OPENED,
        RESET;

        /** All that can happen. */
        public static final Set<Happening> ALL = Set.of(values());
        /** All that can happen without somebody at the by-pass, who reads the position indicators first. */
        public static final Set<Happening> BY_ITSELF = Set.of(GRID_LOST, GRID_BACK, ENERGY_GONE, ENERGY_BACK, RESET);
    }

    /**
     * How a hazard comes about.
     *
     * @param longestS   longest time without interruption, infinite where it stays for seconds or for good [s]
     * @param phase      what the inverter is about meanwhile
     * @param happenings what led to it, beginning in service
     */
    public record Exposure(double longestS, Phase phase, List<Happening> happenings) {
        public Exposure {
            happenings = List.copyOf(happenings);
        }
    }

    /**
     * What a search found.
     *
     * @param exposures hazards that can come about
     * @param moments   different moments reached
     * @param isWhole   whether all that can be reached was
     */
    public record Reached(Map<Hazard, Exposure> exposures, int moments, boolean isWhole) {
        public Reached {
            exposures = Map.copyOf(exposures);
        }

        public Optional<Exposure> find(Hazard hazard) {
            return Optional.ofNullable(exposures.get(hazard));
        }
    }

    private record Branch(Machine machine, Since since, List<Happening> happenings) {}

    /** For each hazard how long it has lasted. */
    private static final class Since {
        private final double[] seconds;

        private Since(double[] seconds) {
            this.seconds = seconds;
        }
    }

    /** Searches with a defect or, with {@link Defect#NONE}, in the healthy house. */
    public static Reached search(HouseModel model, Defect defect, When when) {
        return search(model, defect, when, Happening.ALL);
    }

    /** Searches where only some things happen. */
    public static Reached search(HouseModel model, Defect defect, When when, Set<Happening> possible) {
        Places places = model.places();
        Map<Hazard, Exposure> exposures = new EnumMap<>(Hazard.class);
        Machine start = model.machine(defect);
        start.run(Surroundings.IN_SERVICE, Machine.Until.AT_REST);
        Deque<Branch> waiting = new ArrayDeque<>();
        Set<Moment> known = new HashSet<>();
        waiting.add(new Branch(start, new Since(new double[Hazard.values().length]), List.of()));
        int moments = 0;
        while (!waiting.isEmpty() && moments < MOST_MOMENTS) {
            Branch branch = waiting.remove();
            Machine machine = branch.machine();
            if (!known.add(new Moment(machine, when == When.ANY_TIME ? branch.since().seconds : NOTHING_LASTED)))
                continue;
            moments++;
            double next = machine.nextEvent();
            int hazards = places.hazards(machine.nets(), machine.live());
            if (machine.wasOutOfStep()) {
                Exposure blow = new Exposure(model.shutOffTimeS(), machine.phase(), branch.happenings());
                exposures.merge(Hazard.OUT_OF_STEP, blow, (a, b) -> b.longestS() > a.longestS() ? b : a);
            }
            double[] since = branch.since().seconds.clone();
            for (Hazard hazard : Hazard.values()) {
                int i = hazard.ordinal();
                if ((hazards & hazard.bit()) == 0) {
                    since[i] = 0;
                    continue;
                }
                since[i] = since[i] + next > STAYS_S ? Double.POSITIVE_INFINITY : since[i] + next;
                Exposure exposure = new Exposure(since[i], machine.phase(), branch.happenings());
                exposures.merge(hazard, exposure, (a, b) -> b.longestS() > a.longestS() ? b : a);
            }
            boolean isAtRest = next == Double.POSITIVE_INFINITY || machine.phase() == Phase.OBSERVING;
            if (next != Double.POSITIVE_INFINITY) {
                Machine later = machine.fork();
                later.pass(next);
                waiting.add(new Branch(later, new Since(since), branch.happenings()));
            }
            if (!isAtRest && when == When.AT_REST) continue;
            for (Happening happening : Happening.values()) {
                if (!possible.contains(happening)) continue;
                Surroundings changed = changed(machine, happening);
                if (changed == null) continue;
                Machine other = machine.fork();
                other.surrounded(changed);
                List<Happening> happenings = new ArrayList<>(branch.happenings());
                happenings.add(happening);
                // What a person sees to only after a while does not lengthen what lasted before.
                waiting.add(new Branch(other, branch.since(), happenings));
            }
        }
        return new Reached(exposures, moments, waiting.isEmpty());
    }

    private static @Nullable Surroundings changed(Machine machine, Happening happening) {
        Surroundings now = machine.surroundings();
        boolean hasByPass = !machine.model().installation().byPasses().isEmpty();
        return switch (happening) {
            case GRID_LOST -> now.gridLines() ? now.withoutGrid() : null;
            case GRID_BACK -> now.gridLines() ? null : now.withGrid();
            case ENERGY_GONE -> now.energy() ? now.withoutEnergy() : null;
            case ENERGY_BACK -> now.energy() ? null : now.withEnergy();
            case BY_PASS_CLOSED -> hasByPass && !now.byPassed() ? now.withByPass() : null;
            case BY_PASS_OPENED -> now.byPassed() ? now.withoutByPass() : null;
            case RESET -> machine.phase() == Phase.LOCKED ? now.withReset() : null;
        };
    }

    /** Hazards at rest in the states of service only: quick, for judging many mistakes. */
    static Set<Hazard> atRest(HouseModel model, Defect defect) {
        return search(model, defect, When.AT_REST).exposures().keySet();
    }
}
