package tideover.bench;

/** What came of measuring. */
sealed interface Measurement permits Figure, NotMeasured {}
