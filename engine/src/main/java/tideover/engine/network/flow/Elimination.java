package tideover.engine.network.flow;

/**
 * Where the entries of the triangular factor lie, and which entries each step of the elimination changes: known from the
 * shape alone, so that the numbers need no searching.
 */
final class Elimination {

    /** Position of each unknown in the order. */
    final int[] position;

    /** First entry of each column; column k holds the entries below its diagonal. */
    final int[] start;

    /** Row of each entry, ascending in a column. */
    final int[] row;

    /** For each pair of entries of a column, in turn: the entry it changes, or -1 less the row of a changed diagonal. */
    final int[] target;

    Elimination(int[] order, long[] columns, int words) {
        int size = order.length;
        position = new int[size];
        for (int k = 0; k < size; k++) position[order[k]] = k;
        start = new int[size + 1];
        for (int k = 0; k < size; k++) {
            int degree = 0;
            for (int w = order[k] * words; w < (order[k] + 1) * words; w++) degree += Long.bitCount(columns[w]);
            start[k + 1] = start[k] + degree;
        }
        row = new int[start[size]];
        int pairs = 0;
        for (int k = 0; k < size; k++) {
            int fill = start[k];
            for (int w = 0; w < words; w++) {
                long bits = columns[order[k] * words + w];
                while (bits != 0) {
                    insert(fill++, start[k], position[(w << 6) + Long.numberOfTrailingZeros(bits)]);
                    bits &= bits - 1;
                }
            }
            int degree = start[k + 1] - start[k];
            pairs += degree * (degree + 1) / 2;
        }
        target = new int[pairs];
        int t = 0;
        for (int k = 0; k < size; k++)
            for (int a = start[k]; a < start[k + 1]; a++) {
                target[t++] = -1 - row[a];
                int search = start[row[a]];
                for (int b = a + 1; b < start[k + 1]; b++) {
                    while (row[search] != row[b]) search++;
                    target[t++] = search;
                }
            }
    }

    private void insert(int end, int begin, int value) {
        int i = end;
        while (i > begin && row[i - 1] > value) {
            row[i] = row[i - 1];
            i--;
        }
        row[i] = value;
    }

    int size() {
        return position.length;
    }

    int entryCount() {
        return row.length;
    }

    /** The entry of two unknowns, by their positions; -1 where nothing connects them. */
    int findEntry(int one, int two) {
        int column = Math.min(one, two);
        int wanted = Math.max(one, two);
        int i = start[column];
        while (i < start[column + 1] && row[i] != wanted) i++;
        return i < start[column + 1] ? i : -1;
    }

    /** The entry of two unknowns that something connects. */
    int entry(int one, int two) {
        int entry = findEntry(one, two);
        if (entry < 0) throw new IllegalArgumentException("nothing connects unknowns %d and %d".formatted(one, two));
        return entry;
    }
}
