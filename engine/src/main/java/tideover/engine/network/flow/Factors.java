package tideover.engine.network.flow;

/** The equations of a network in factors L·D·Lᵀ, complex and symmetric; solves for any right-hand side. */
final class Factors {

    private final Elimination shape;
    private final double[] pivotR;
    private final double[] pivotX;
    private final double[] lowerR;
    private final double[] lowerX;

    /**
     * @param diagonalR overwritten, as are the others
     */
    Factors(Elimination shape, double[] diagonalR, double[] diagonalX, double[] offR, double[] offX) {
        this.shape = shape;
        pivotR = diagonalR;
        pivotX = diagonalX;
        lowerR = offR;
        lowerX = offX;
        factorise();
    }

    private void factorise() {
        int[] start = shape.start;
        int[] target = shape.target;
        int t = 0;
        for (int k = 0; k < pivotR.length; k++) {
            double square = pivotR[k] * pivotR[k] + pivotX[k] * pivotX[k];
            double inverseR = pivotR[k] / square;
            double inverseX = -pivotX[k] / square;
            pivotR[k] = inverseR;
            pivotX[k] = inverseX;
            int end = start[k + 1];
            for (int a = start[k]; a < end; a++) {
                double aR = lowerR[a];
                double aX = lowerX[a];
                double lR = aR * inverseR - aX * inverseX;
                double lX = aR * inverseX + aX * inverseR;
                int diagonal = -1 - target[t++];
                pivotR[diagonal] -= lR * aR - lX * aX;
                pivotX[diagonal] -= lR * aX + lX * aR;
                for (int b = a + 1; b < end; b++) {
                    int changed = target[t++];
                    lowerR[changed] -= lR * lowerR[b] - lX * lowerX[b];
                    lowerX[changed] -= lR * lowerX[b] + lX * lowerR[b];
                }
                lowerR[a] = lR;
                lowerX[a] = lX;
            }
        }
    }

    /** Turns right-hand sides into solutions. */
    void solve(double[] xR, double[] xX) {
        forward(xR, xX);
        backward(xR, xX);
    }

    /** The first half of a solution. What is zero before the first other number of a right-hand side stays so. */
    void forward(double[] xR, double[] xX) {
        int[] start = shape.start;
        int[] row = shape.row;
        for (int k = 0; k < pivotR.length; k++) {
            double vR = xR[k];
            double vX = xX[k];
            if (vR == 0 && vX == 0) continue;
            for (int a = start[k]; a < start[k + 1]; a++) {
                xR[row[a]] -= lowerR[a] * vR - lowerX[a] * vX;
                xX[row[a]] -= lowerR[a] * vX + lowerX[a] * vR;
            }
        }
    }

    /** The second half. */
    void backward(double[] xR, double[] xX) {
        int[] start = shape.start;
        int[] row = shape.row;
        for (int k = pivotR.length - 1; k >= 0; k--) {
            double vR = xR[k] * pivotR[k] - xX[k] * pivotX[k];
            double vX = xR[k] * pivotX[k] + xX[k] * pivotR[k];
            for (int a = start[k]; a < start[k + 1]; a++) {
                vR -= lowerR[a] * xR[row[a]] - lowerX[a] * xX[row[a]];
                vX -= lowerR[a] * xX[row[a]] + lowerX[a] * xR[row[a]];
            }
            xR[k] = vR;
            xX[k] = vX;
        }
    }

    /** One right-hand side times the solution of another, both given as their first halves: aᵀ·A⁻¹·b. */
    Phasor product(double[] aR, double[] aX, double[] bR, double[] bX) {
        double sumR = 0;
        double sumX = 0;
        for (int k = 0; k < pivotR.length; k++) {
            if (aR[k] == 0 && aX[k] == 0) continue;
            double pR = bR[k] * pivotR[k] - bX[k] * pivotX[k];
            double pX = bR[k] * pivotX[k] + bX[k] * pivotR[k];
            sumR += aR[k] * pR - aX[k] * pX;
            sumX += aR[k] * pX + aX[k] * pR;
        }
        return new Phasor(sumR, sumX);
    }
}
