package tideover.engine.site;

/** How one gets a fact that is missing; open findings are grouped by it. */
public enum FactSource {
    /** Read from a photo of the open board. */
    PHOTO_OF_BOARD,
    /** A letter to the grid operator. */
    ASK_OPERATOR,
    /** With an instrument, on site. */
    MEASURE,
    /** Nameplate or data sheet of the device. */
    DATA_SHEET,
    ASK_CUSTOMER,
    /** By looking on site: where a cable goes, how it lies, what is there. */
    LOOK
}
