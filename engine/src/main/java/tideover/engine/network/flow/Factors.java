package tideover.engine.network.flow;

/** The equations of a network in factors L·D·Lᵀ, complex and symmetric; solves for any right-hand side. */
final class Factors {

    private final int[] start;
    private final int[] row;
    private final double[] pivotR;
    private final double[] pivotX;
    private final double[] lowerR;
    private final double[] lowerX;

    /**
     * @param diagonalR overwritten, as are the others
     */
    Factors(Elimination shape, double[] diagonalR, double[] diagonalX, double[] offR, double[] offX) {
        this(shape.start, shape.row, diagonalR, diagonalX, offR, offX);
        factorise(shape.target);
    }

    private Factors(int[] start, int[] row, double[] pivotR, double[] pivotX, double[] lowerR, double[] lowerX) {
        this.start = start;
        this.row = row;
        this.pivotR = pivotR;
        this.pivotX = pivotX;
        this.lowerR = lowerR;
        this.lowerX = lowerX;
    }

    /** Marks the unknowns that those marked lead to in the elimination: together they can be solved for alone. */
    void close(boolean[] marked) {
        for (int k = 0; k < marked.length; k++) if (marked[k] && start[k] < start[k + 1]) marked[row[start[k]]] = true;
    }

    /**
     * The part that solves for some unknowns where all right-hand sides lie among them.
     *
     * @param kept closed as by {@link #close}
     * @param position of each kept unknown in the part
     */
    Factors part(boolean[] kept, int[] position) {
        int unknowns = 0;
        int entries = 0;
        for (int k = 0; k < kept.length; k++) {
            if (!kept[k]) continue;
            unknowns++;
            entries += start[k + 1] - start[k];
        }
        Factors part = new Factors(
                new int[unknowns + 1],
                new int[entries],
                new double[unknowns],
                new double[unknowns],
                new double[entries],
                new double[entries]);
        int unknown = 0;
        int entry = 0;
        for (int k = 0; k < kept.length; k++) {
            if (!kept[k]) continue;
            part.pivotR[unknown] = pivotR[k];
            part.pivotX[unknown] = pivotX[k];
            for (int a = start[k]; a < start[k + 1]; a++) {
                part.row[entry] = position[row[a]];
                part.lowerR[entry] = lowerR[a];
                part.lowerX[entry++] = lowerX[a];
            }
            part.start[++unknown] = entry;
        }
        return part;
    }

    private void factorise(int[] target) {
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
