package tideover.engine.wiring.diagnosis;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;
import tideover.engine.wiring.procedure.Run;

/** What every reading shows with every single mistake. */
public final class Dictionary {

    private final Run run;
    private final List<Mistake> mistakes;
    private final byte[][] shown;

    private Dictionary(Run run, List<Mistake> mistakes) {
        this.run = run;
        this.mistakes = List.copyOf(mistakes);
        shown = new byte[mistakes.size()][];
        for (Mistake mistake : mistakes) shown[mistake.index()] = run.readings(mistake.defect());
    }

    /** The dictionary of a house. */
    public static Dictionary of(Run run, List<Mistake> mistakes) {
        return new Dictionary(run, mistakes);
    }

    /** The run behind it. */
    public Run run() {
        return run;
    }

    /** What a reading shows with a mistake. */
    public Shown shown(Mistake mistake, PlannedReading reading) {
        return Run.shown(shown[mistake.index()][reading.index()]);
    }

    /** A reading by its name. */
    public Optional<PlannedReading> findReading(String id) {
        return run.procedure().readings().stream()
                .filter(reading -> reading.id().equals(id))
                .findFirst();
    }

    /** Mistakes that show exactly what was seen. */
    public List<Mistake> explaining(List<Observation> seen) {
        List<Mistake> found = new ArrayList<>();
        for (Mistake mistake : mistakes) {
            boolean fits = true;
            for (Observation each : seen)
                fits &= isUntold(mistake, each.reading())
                        || shown[mistake.index()][each.reading().index()]
                                == each.shown().ordinal();
            if (fits) found.add(mistake);
        }
        return found;
    }

    /** A core is lifted when lines and neutrals have been found right: what it shows with a mistake in these is not told. */
    private static boolean isUntold(Mistake mistake, PlannedReading reading) {
        return reading.lifted() != null && !mistake.defect().power().isNone();
    }

    /** Whether the healthy house shows exactly what was seen. */
    public boolean isHealthy(List<Observation> seen) {
        for (Observation each : seen) if (run.expected(each.reading()) != each.shown()) return false;
        return true;
    }

    /**
     * The reading that tells most for its effort.
     *
     * @param left    explanations that are left
     * @param without readings already taken
     * @return nothing where no reading tells them apart
     */
    public Optional<Suggestion> findNext(List<Mistake> left, Set<PlannedReading> without) {
        Suggestion best = null;
        double most = 0;
        for (PlannedReading reading : run.procedure().readings()) {
            if (without.contains(reading) || left.stream().anyMatch(mistake -> isUntold(mistake, reading))) continue;
            int[] counts = new int[Shown.values().length];
            for (Mistake mistake : left) counts[shown[mistake.index()][reading.index()]]++;
            double gain = bits(counts, left.size()) / effort(reading);
            if (gain <= most) continue;
            most = gain;
            best = suggestion(reading, counts);
        }
        return Optional.ofNullable(best);
    }

    /** Information in bits that a reading gives. */
    private static double bits(int[] counts, int all) {
        double bits = 0;
        for (int count : counts) {
            if (count == 0 || count == all) continue;
            double share = (double) count / all;
            bits -= share * Math.log(share) / Math.log(2);
        }
        return bits;
    }

    private static double effort(PlannedReading reading) {
        double effort = reading.reading().kind().effort();
        return reading.lifted() == null
                ? effort
                : effort + reading.reading().kind().effort() + 8;
    }

    private static Suggestion suggestion(PlannedReading reading, int[] counts) {
        Map<Shown, Integer> left = new EnumMap<>(Shown.class);
        for (Shown value : Shown.values()) {
            int count = counts[value.ordinal()];
            if (count == 0) continue;
            left.put(value, count);
        }
        return new Suggestion(reading, left);
    }

    /**
     * How well all readings together tell the mistakes apart.
     *
     * @param sizes how many mistakes read alike, group by group
     */
    public record Resolution(List<Integer> sizes) {
        public Resolution {
            sizes = List.copyOf(sizes);
        }

        /** How many mistakes are left on average when one of them is there and every reading is taken. */
        public double mean() {
            double squares = 0;
            int all = 0;
            for (int size : sizes) {
                squares += (double) size * size;
                all += size;
            }
            return all == 0 ? 0 : squares / all;
        }

        /** Most that can be left. */
        public int largest() {
            return sizes.stream().mapToInt(i -> i).max().orElse(0);
        }
    }

    /** How well all readings together tell visible mistakes apart. */
    public Resolution resolution() {
        Map<List<Byte>, Integer> groups = new HashMap<>();
        byte[] healthy = run.expectations();
        for (Mistake mistake : mistakes) {
            byte[] row = shown[mistake.index()];
            if (Arrays.equals(row, healthy)) continue;
            List<Byte> key = new ArrayList<>(row.length);
            for (byte value : row) key.add(value);
            groups.merge(key, 1, Integer::sum);
        }
        return new Resolution(new ArrayList<>(groups.values()));
    }

    /** Readings that could be taken, cheapest first. */
    public List<PlannedReading> readings() {
        List<PlannedReading> all = new ArrayList<>(run.procedure().readings());
        all.sort(Comparator.comparingDouble(Dictionary::effort));
        return all;
    }
}
