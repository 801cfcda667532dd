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
        int[] start = shape.start;
        int[] row = shape.row;
        int size = pivotR.length;
        for (int k = 0; k < size; k++) {
            double vR = xR[k];
            double vX = xX[k];
            for (int a = start[k]; a < start[k + 1]; a++) {
                xR[row[a]] -= lowerR[a] * vR - lowerX[a] * vX;
                xX[row[a]] -= lowerR[a] * vX + lowerX[a] * vR;
            }
            xR[k] = vR * pivotR[k] - vX * pivotX[k];
            xX[k] = vR * pivotX[k] + vX * pivotR[k];
        }
        for (int k = size - 1; k >= 0; k--) {
            double vR = xR[k];
            double vX = xX[k];
            for (int a = start[k]; a < start[k + 1]; a++) {
                vR -= lowerR[a] * xR[row[a]] - lowerX[a] * xX[row[a]];
                vX -= lowerR[a] * xX[row[a]] + lowerX[a] * xR[row[a]];
            }
            xR[k] = vR;
            xX[k] = vX;
        }
    }
}
