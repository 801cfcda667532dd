package tideover.engine.wiring.net;

/** Potentials in a power net, one bit each. */
public final class Potential {

    public static final int GRID_L1 = 1;
    public static final int GRID_L2 = 1 << 1;
    public static final int GRID_L3 = 1 << 2;
    public static final int GRID_N = 1 << 3;
    public static final int ISLAND_L1 = 1 << 4;
    public static final int ISLAND_L2 = 1 << 5;
    public static final int ISLAND_L3 = 1 << 6;
    public static final int ISLAND_N = 1 << 7;
    /** The main earthing terminal and all that is joined to it. */
    public static final int EARTH = 1 << 8;

    public static final int GRID_LINES = GRID_L1 | GRID_L2 | GRID_L3;
    public static final int ISLAND_LINES = ISLAND_L1 | ISLAND_L2 | ISLAND_L3;
    public static final int LINES = GRID_LINES | ISLAND_LINES;
    public static final int NEUTRALS = GRID_N | ISLAND_N;

    private Potential() {}

    /** A source system: what forms one voltage. */
    public enum System {
        GRID(0),
        ISLAND(4);

        private final int shift;

        System(int shift) {
            this.shift = shift;
        }

        /** Its line, 0 to 2, or its neutral, 3. */
        public int bit(int conductor) {
            return 1 << (shift + conductor);
        }

        /** Its lines. */
        public int lines() {
            return 7 << shift;
        }

        /** Its neutral. */
        public int neutral() {
            return 8 << shift;
        }

        /** Those of its potentials that are among others: bits 0 to 2 the lines, 3 the neutral. */
        public int of(int potentials) {
            return potentials >>> shift & 15;
        }
    }
}
