package tideover.engine.site;

/** What a bus runs on. */
public enum BusMedium {
    /** Two-wire line of TIA/EIA-485-A. */
    RS485,
    /** TCP over Ethernet. */
    TCP
}
