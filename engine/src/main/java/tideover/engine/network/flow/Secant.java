package tideover.engine.network.flow;

/**
 * The next guess of a vector from the last two residuals: what their difference explains of the residual is made good at
 * once, the rest by a plain step (Anderson's acceleration of depth one, J. ACM 12 (1965) 547, from memory). More depth
 * saves rounds but no time.
 */
final class Secant {

    private final double[] lastGuess;
    private final double[] lastResidual;
    private boolean isFirst = true;

    Secant(int size) {
        lastGuess = new double[size];
        lastResidual = new double[size];
    }

    /** Turns a guess into the next. */
    void improve(double[] guess, double[] residual) {
        double share = isFirst ? 0 : share(residual);
        isFirst = false;
        for (int i = 0; i < guess.length; i++) {
            double at = guess[i];
            double step = at - lastGuess[i] + residual[i] - lastResidual[i];
            lastGuess[i] = at;
            lastResidual[i] = residual[i];
            guess[i] = at + residual[i] - share * step;
        }
    }

    /** How much of the residual its last change explains. */
    private double share(double[] residual) {
        double product = 0;
        double square = 0;
        for (int i = 0; i < residual.length; i++) {
            double change = residual[i] - lastResidual[i];
            product += residual[i] * change;
            square += change * change;
        }
        return square == 0 ? 0 : product / square;
    }
}
