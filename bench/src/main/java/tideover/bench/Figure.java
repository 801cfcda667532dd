package tideover.bench;

/**
 * What was measured.
 *
 * @param value  median of the rounds, in the unit of its benchmark
 * @param work   how much was done for it
 * @param digest of everything that came out, in the order of the rounds
 */
record Figure(double value, String work, String digest) {}
