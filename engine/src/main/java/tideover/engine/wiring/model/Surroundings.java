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

    public Surroundings withGrid(boolean live) {
        return new Surroundings(live, gridNeutral, energy, byPassed, breakersOn, rcdsOn, invertersOn, byHand, false);
    }

    public Surroundings withEnergy(boolean there) {
        return new Surroundings(
                gridLines, gridNeutral, there, byPassed, breakersOn, rcdsOn, invertersOn, byHand, false);
    }

    public Surroundings withByPass(boolean closed) {
        return new Surroundings(gridLines, gridNeutral, energy, closed, breakersOn, rcdsOn, invertersOn, byHand, false);
    }

    public Surroundings withBreakers(boolean on) {
        return new Surroundings(gridLines, gridNeutral, energy, byPassed, on, rcdsOn, invertersOn, byHand, false);
    }

    public Surroundings withRcds(boolean on) {
        return new Surroundings(gridLines, gridNeutral, energy, byPassed, breakersOn, on, invertersOn, byHand, false);
    }

    public Surroundings withInverters(boolean on) {
        return new Surroundings(gridLines, gridNeutral, energy, byPassed, breakersOn, rcdsOn, on, byHand, false);
    }

    public Surroundings withNeutral(boolean connected) {
        return new Surroundings(gridLines, connected, energy, byPassed, breakersOn, rcdsOn, invertersOn, byHand, false);
    }

    public Surroundings withByHand(ByHand held) {
        return new Surroundings(gridLines, gridNeutral, energy, byPassed, breakersOn, rcdsOn, invertersOn, held, false);
    }

    public Surroundings withReset() {
        return new Surroundings(
                gridLines, gridNeutral, energy, byPassed, breakersOn, rcdsOn, invertersOn, byHand, true);
    }
}
