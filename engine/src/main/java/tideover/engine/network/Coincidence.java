package tideover.engine.network;

/**
 * How much of the installed power of a house is drawn at once on one line. Loads not named here count in full.
 *
 * @param furtherSocketsRatio share of each socket circuit but the largest, 0 to 1
 * @param lightingRatio       share of the lighting circuits, 0 to 1
 */
public record Coincidence(double furtherSocketsRatio, double lightingRatio) {

    public Coincidence {
        if (!(furtherSocketsRatio >= 0 && furtherSocketsRatio <= 1))
            throw new IllegalArgumentException("furtherSocketsRatio %s is outside 0..1".formatted(furtherSocketsRatio));
        if (!(lightingRatio >= 0 && lightingRatio <= 1))
            throw new IllegalArgumentException("lightingRatio %s is outside 0..1".formatted(lightingRatio));
    }
}
