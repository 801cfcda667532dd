package tideover.bench;

import java.util.Collection;

/**
 * What was measured.
 *
 * @param value  median of the rounds, in the unit of its benchmark
 * @param work   how much was done for it
 * @param digest of everything that came out, in the order of the rounds
 */
record Figure(double value, String work, String digest) implements Measurement {

    /** @param rounds one number for each round */
    static Figure of(Collection<Double> rounds, String work, String digest) {
        double[] sorted = rounds.stream().mapToDouble(d -> d).sorted().toArray();
        return new Figure(sorted[sorted.length / 2], work, digest);
    }
}
