package tideover.bench;

/**
 * Something could not be measured on this machine.
 *
 * @param reason what is lacking
 */
record NotMeasured(String reason) implements Measurement {}
