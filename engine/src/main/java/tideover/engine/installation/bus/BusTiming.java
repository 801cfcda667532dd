package tideover.engine.installation.bus;

import tideover.engine.site.Parity;

/**
 * How long things take on a serial line.
 *
 * @param characterS one character [s]
 * @param innerGapS  longest gap inside a frame, t1.5 [s]
 * @param outerGapS  shortest gap between frames, t3.5 [s]
 */
public record BusTiming(double characterS, double innerGapS, double outerGapS) {

    /** Above this rate the gaps are fixed [bit/s]. */
    private static final int FASTEST_BY_CHARACTERS_BIT_PER_S = 19_200;

    private static final double FIXED_INNER_GAP_S = 750e-6;
    private static final double FIXED_OUTER_GAP_S = 1750e-6;
    private static final int REQUEST_BYTES = 8;
    private static final int RESPONSE_BYTES = 5;
    private static final int BYTES_OF_REGISTER = 2;

    /**
     * The timing of one setting.
     *
     * @param rateBitPerS bit rate [bit/s], above 0
     * @param stopBits    1 or 2
     * @throws IllegalArgumentException if the rate is not above 0
     * @see "MODBUS over Serial Line V1.02, 2.5.1.1"
     */
    public static BusTiming of(int rateBitPerS, Parity parity, int stopBits) {
        if (rateBitPerS <= 0) throw new IllegalArgumentException("rate %d is not above 0".formatted(rateBitPerS));
        int bits = 1 + 8 + (parity == Parity.NONE ? 0 : 1) + stopBits;
        double characterS = (double) bits / rateBitPerS;
        return rateBitPerS > FASTEST_BY_CHARACTERS_BIT_PER_S
                ? new BusTiming(characterS, FIXED_INNER_GAP_S, FIXED_OUTER_GAP_S)
                : new BusTiming(characterS, 1.5 * characterS, 3.5 * characterS);
    }

    /**
     * One question and its answer: (Nreq + Nresp)·Tchar + 2·t3.5 + turnaround.
     *
     * @param registers   registers read
     * @param turnaroundS longest time until the server answers [s]
     * @return [s]
     */
    public double requestS(int registers, double turnaroundS) {
        int bytes = REQUEST_BYTES + RESPONSE_BYTES + BYTES_OF_REGISTER * registers;
        return bytes * characterS + 2 * outerGapS + turnaroundS;
    }
}
