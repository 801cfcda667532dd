package tideover.engine.wiring.procedure;

import tideover.engine.wiring.model.Machine;
import tideover.engine.wiring.model.Machine.Until;
import tideover.engine.wiring.model.Surroundings;
import tideover.engine.wiring.model.Surroundings.ByHand;

/** How the house stands while readings are taken, in the order in which a commissioning comes through them. */
public enum Situation {
    /** Isolated and dead, switches at rest, breakers off. */
    DEAD,
    /** Dead, the residual current devices of groups off. */
    DEAD_RCDS_OFF,
    /** Dead, breakers on. */
    DEAD_BREAKERS_ON,
    /** Dead, the islanding switch closed by hand. */
    DEAD_SWITCH_CLOSED,
    /** Dead, the neutral–earth switch closed by hand. */
    DEAD_LINK_CLOSED,
    /** Connected, all outgoing breakers off. */
    CONNECTED_UNLOADED,
    /** The grid's three lines opened, its neutral left on. */
    ISLAND_UNLOADED,
    /** The lines closed again, during the observation time. */
    WAITING_UNLOADED,
    /** After the observation time. */
    RETURNED_UNLOADED,
    /** The lines opened, the battery empty. */
    DARK,
    /** By-passed by hand, the inverter switched off. */
    BY_PASSED,
    /** By-passed by hand, the inverter left switched on. */
    BY_PASSED_INVERTER_ON,
    /** Connected, breakers on. */
    CONNECTED,
    /** The lines opened, breakers on. */
    ISLAND,
    /** The lines closed again, breakers on. */
    WAITING,
    /** After the observation time, breakers on. */
    RETURNED;

    /** What surrounds the house then. */
    public Surroundings surroundings() {
        return switch (this) {
            case DEAD -> Surroundings.NOTHING;
            case DEAD_RCDS_OFF -> Surroundings.NOTHING.withoutRcds();
            case DEAD_BREAKERS_ON -> Surroundings.NOTHING.withBreakers();
            case DEAD_SWITCH_CLOSED -> Surroundings.NOTHING.withByHand(ByHand.SWITCH_CLOSED);
            case DEAD_LINK_CLOSED -> Surroundings.NOTHING.withByHand(ByHand.LINK_CLOSED);
            case CONNECTED_UNLOADED, WAITING_UNLOADED, RETURNED_UNLOADED -> Surroundings.IN_SERVICE.withoutBreakers();
            case ISLAND_UNLOADED -> Surroundings.IN_SERVICE.withoutBreakers().withoutGrid();
            case DARK -> Surroundings.IN_SERVICE.withoutBreakers().withoutGrid().withoutEnergy();
            case BY_PASSED ->
                Surroundings.IN_SERVICE.withoutBreakers().withoutInverters().withByPass();
            case BY_PASSED_INVERTER_ON ->
                Surroundings.IN_SERVICE.withoutBreakers().withByPass();
            case CONNECTED, WAITING, RETURNED -> Surroundings.IN_SERVICE;
            case ISLAND -> Surroundings.IN_SERVICE.withoutGrid();
        };
    }

    /** Whether nothing has voltage. */
    public boolean isDead() {
        return ordinal() <= DEAD_LINK_CLOSED.ordinal();
    }

    /** Brings a machine here from the situation before. A lock-out is reset once. */
    void enter(Machine machine) {
        if (this == DARK) machine.run(surroundings().withEnergy(), Until.AT_REST);
        boolean waits = this == WAITING_UNLOADED || this == WAITING;
        boolean returns = this == RETURNED_UNLOADED || this == RETURNED;
        Surroundings next = returns || this == ISLAND_UNLOADED || this == ISLAND
                ? surroundings()
                : surroundings().withReset();
        machine.run(next, waits ? Until.OBSERVING : Until.AT_REST);
    }
}
