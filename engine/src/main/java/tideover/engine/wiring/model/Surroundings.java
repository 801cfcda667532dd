package tideover.engine.wiring.model;

/**
 * What happens to the house from outside and by hand.
 *
 * @param gridLines   whether the grid's lines have voltage
 * @param gridNeutral whether its neutral is connected; loss is simulated by opening the lines only
 * @param energy      whether the island source has any
 * @param byPassed    whether the by-pass is closed by hand
 * @param breakersOn  whether the breakers of all final circuits are on
 * @param rcdsOn      whether the residual current devices of groups are on
 * @param invertersOn whether the inverters are switched on and their isolators closed
 * @param byHand      whether somebody moves a switch by hand, everything being isolated
 * @param reset       whether somebody resets a lock-out just now
 */
public record Surroundings(
        boolean gridLines,
        boolean gridNeutral,
        boolean energy,
        boolean byPassed,
        boolean breakersOn,
        boolean rcdsOn,
        boolean invertersOn,
        ByHand byHand,
        boolean reset) {

    /** A switching device held by hand for a measurement. */
    public enum ByHand {
        NOTHING,
        /** The islanding switch is closed. */
        SWITCH_CLOSED,
        /** The neutral–earth switch is closed. */
        LINK_CLOSED
    }

    /** Everything isolated and without energy, breakers off. */
    public static final Surroundings NOTHING =
            new Surroundings(false, false, false, false, false, true, false, ByHand.NOTHING, false);

    /** In operation, the grid live. */
    public static final Surroundings IN_SERVICE =
            new Surroundings(true, true, true, false, true, true, true, ByHand.NOTHING, false);

    /** The grid's lines have voltage. */
    public Surroundings withGrid() {
        return new Surroundings(true, gridNeutral, energy, byPassed, breakersOn, rcdsOn, invertersOn, byHand, false);
    }

    /** The grid's lines are open, its neutral stays. */
    public Surroundings withoutGrid() {
        return new Surroundings(false, gridNeutral, energy, byPassed, breakersOn, rcdsOn, invertersOn, byHand, false);
    }

    /** The island source has energy. */
    public Surroundings withEnergy() {
        return new Surroundings(gridLines, gridNeutral, true, byPassed, breakersOn, rcdsOn, invertersOn, byHand, false);
    }

    /** The battery is empty and there is no sun. */
    public Surroundings withoutEnergy() {
        return new Surroundings(
                gridLines, gridNeutral, false, byPassed, breakersOn, rcdsOn, invertersOn, byHand, false);
    }

    /** By-passed by hand. */
    public Surroundings withByPass() {
        return new Surroundings(gridLines, gridNeutral, energy, true, breakersOn, rcdsOn, invertersOn, byHand, false);
    }

    /** The by-pass is open. */
    public Surroundings withoutByPass() {
        return new Surroundings(gridLines, gridNeutral, energy, false, breakersOn, rcdsOn, invertersOn, byHand, false);
    }

    /** The breakers of all final circuits are on. */
    public Surroundings withBreakers() {
        return new Surroundings(gridLines, gridNeutral, energy, byPassed, true, rcdsOn, invertersOn, byHand, false);
    }

    /** They are off. */
    public Surroundings withoutBreakers() {
        return new Surroundings(gridLines, gridNeutral, energy, byPassed, false, rcdsOn, invertersOn, byHand, false);
    }

    /** The residual current devices of groups are off. */
    public Surroundings withoutRcds() {
        return new Surroundings(
                gridLines, gridNeutral, energy, byPassed, breakersOn, false, invertersOn, byHand, false);
    }

    /** The inverters are switched off and isolated. */
    public Surroundings withoutInverters() {
        return new Surroundings(gridLines, gridNeutral, energy, byPassed, breakersOn, rcdsOn, false, byHand, false);
    }

    /** Somebody holds a switch. */
    public Surroundings withByHand(ByHand held) {
        return new Surroundings(gridLines, gridNeutral, energy, byPassed, breakersOn, rcdsOn, invertersOn, held, false);
    }

    /** Somebody resets a lock-out just now. */
    public Surroundings withReset() {
        return new Surroundings(
                gridLines, gridNeutral, energy, byPassed, breakersOn, rcdsOn, invertersOn, byHand, true);
    }

    /** All of it in one number; two are equal if these are. */
    int bits() {
        int bits = byHand.ordinal();
        for (boolean each :
                new boolean[] {gridLines, gridNeutral, energy, byPassed, breakersOn, rcdsOn, invertersOn, reset})
            bits = bits << 1 | (each ? 1 : 0);
        return bits;
    }
}
