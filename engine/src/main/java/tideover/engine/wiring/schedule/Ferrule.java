package tideover.engine.wiring.schedule;

/**
 * An end sleeve for a stranded conductor.
 *
 * @param crossSectionMm2 of the conductor it takes [mm²]
 * @param sleeveLengthM   length of its metal sleeve [m]
 */
public record Ferrule(double crossSectionMm2, double sleeveLengthM) {}
