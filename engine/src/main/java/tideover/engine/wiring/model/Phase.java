package tideover.engine.wiring.model;

/** What the inverter that leads island operation is about. */
public enum Phase {
    /** Without energy: battery empty and no sun, its control supply gone. */
    DARK,
    /** Connected: it follows the grid. */
    FOLLOWING,
    /** The grid has left the window; it stops and opens its own relays. */
    LOSING,
    /** It has requested separation and waits for the feedback. */
    SEPARATING,
    /** It has requested the neutral–earth link and waits for the feedback. */
    EARTHING,
    /** It builds up its voltage. */
    STARTING,
    /** It forms the island's voltage, the grid is dead. */
    FORMING,
    /** It forms the island's voltage and observes the grid that is back. */
    OBSERVING,
    /** It has stopped and waits until the link is open. */
    UNLINKING,
    /** It has requested the switch closed and waits for the grid's voltage. */
    CLOSING,
    /** A feedback failed, or a fault could not be fed: locked out, dark, until somebody resets it. */
    LOCKED,
    /** Stopped by hand, or not allowed to run. */
    STOPPED;

    /** Whether it forms a voltage. */
    public boolean isForming() {
        return this == FORMING || this == OBSERVING;
    }

    /** Whether it wants the islanding switch closed. */
    public boolean wantsSwitchClosed() {
        return this == FOLLOWING || this == LOSING || this == CLOSING;
    }

    /** Whether it wants the neutral–earth switch closed. */
    public boolean wantsLinkClosed() {
        return this == EARTHING || this == STARTING || isForming();
    }

    /** Whether its own relays are open. */
    public boolean isOff() {
        return this != FOLLOWING && this != LOSING && !isForming();
    }
}
