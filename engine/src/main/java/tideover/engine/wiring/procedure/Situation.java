package tideover.engine.wiring.procedure;

import tideover.engine.wiring.model.Machine;
import tideover.engine.wiring.model.Machine.Until;
import tideover.engine.wiring.model.Surroundings;
import tideover.engine.wiring.model.Surroundings.ByHand;

/** How the house stands while readings are taken, in the order in which a commissioning comes through them. */
public enum Situation {
    /** Isolated and dead, switches at rest, breakers off. */
    DEAD(Surroundings.NOTHING),
    /** Dead, the residual current devices of groups off. */
    DEAD_RCDS_OFF(Surroundings.NOTHING.withRcds(false)),
    /** Dead, breakers on. */
    DEAD_BREAKERS_ON(Surroundings.NOTHING.withBreakers(true)),
    /** Dead, the islanding switch closed by hand. */
    DEAD_SWITCH_CLOSED(Surroundings.NOTHING.withByHand(ByHand.SWITCH_CLOSED)),
    /** Dead, the neutral–earth switch closed by hand. */
    DEAD_LINK_CLOSED(Surroundings.NOTHING.withByHand(ByHand.LINK_CLOSED)),
    /** Connected, all outgoing breakers off. */
    CONNECTED_UNLOADED(live().withBreakers(false)),
    /** The grid's three lines opened, its neutral left on. */
    ISLAND_UNLOADED(live().withBreakers(false).withGrid(false)),
    /** The lines closed again, during the observation time. */
    WAITING_UNLOADED(live().withBreakers(false)),
    /** After the observation time. */
    RETURNED_UNLOADED(live().withBreakers(false)),
    /** The lines opened, the battery empty. */
    DARK(live().withBreakers(false).withGrid(false).withEnergy(false)),
    /** By-passed by hand, the inverter switched off. */
    BY_PASSED(live().withBreakers(false).withInverters(false).withByPass(true)),
    /** By-passed by hand, the inverter left switched on. */
    BY_PASSED_INVERTER_ON(live().withBreakers(false).withByPass(true)),
    /** Connected, breakers on. */
    CONNECTED(live()),
    /** The lines opened, breakers on. */
    ISLAND(live().withGrid(false)),
    /** The lines closed again, breakers on. */
    WAITING(live()),
    /** After the observation time, breakers on. */
    RETURNED(live());

    private final Surroundings surroundings;

    Situation(Surroundings surroundings) {
        this.surroundings = surroundings;
    }

    private static Surroundings live() {
        return Surroundings.IN_SERVICE;
    }

    /** Whether nothing has voltage. */
    public boolean isDead() {
        return ordinal() <= DEAD_LINK_CLOSED.ordinal();
    }

    /** Brings a machine here from the situation before. A lock-out is reset once. */
    void enter(Machine machine) {
        if (this == DARK) machine.run(surroundings.withEnergy(true), Until.AT_REST);
        boolean waits = this == WAITING_UNLOADED || this == WAITING;
        boolean returns = this == RETURNED_UNLOADED || this == RETURNED;
        Surroundings next =
                returns || this == ISLAND_UNLOADED || this == ISLAND ? surroundings : surroundings.withReset();
        machine.run(next, waits ? Until.OBSERVING : Until.AT_REST);
    }
}
