package tideover.engine.network.flow;

import java.util.ArrayList;
import java.util.List;

/** Inverse of the few rows of one cable. */
final class Inverse {

    private Inverse() {}

    /**
     * @param rows square
     * @throws IllegalArgumentException if there is none
     */
    static List<List<Phasor>> of(List<List<Phasor>> rows) {
        int size = rows.size();
        Phasor[][] left = new Phasor[size][size];
        Phasor[][] right = new Phasor[size][size];
        for (int i = 0; i < size; i++) {
            if (rows.get(i).size() != size)
                throw new IllegalArgumentException("row %d of %d has %d impedances"
                        .formatted(i, size, rows.get(i).size()));
            for (int j = 0; j < size; j++) {
                left[i][j] = rows.get(i).get(j);
                right[i][j] = i == j ? Phasor.of(1) : Phasor.ZERO;
            }
        }
        for (int column = 0; column < size; column++) {
            int pivot = column;
            for (int i = column + 1; i < size; i++)
                if (left[i][column].magnitude() > left[pivot][column].magnitude()) pivot = i;
            if (left[pivot][column].isZero())
                throw new IllegalArgumentException("these impedances have no inverse: " + rows);
            swap(left, pivot, column);
            swap(right, pivot, column);
            Phasor scale = Phasor.of(1).over(left[column][column]);
            for (int j = 0; j < size; j++) {
                left[column][j] = left[column][j].times(scale);
                right[column][j] = right[column][j].times(scale);
            }
            for (int i = 0; i < size; i++) {
                if (i == column) continue;
                Phasor factor = left[i][column];
                for (int j = 0; j < size; j++) {
                    left[i][j] = left[i][j].minus(factor.times(left[column][j]));
                    right[i][j] = right[i][j].minus(factor.times(right[column][j]));
                }
            }
        }
        List<List<Phasor>> inverse = new ArrayList<>();
        for (Phasor[] row : right) inverse.add(List.of(row));
        return List.copyOf(inverse);
    }

    private static void swap(Phasor[][] rows, int one, int two) {
        Phasor[] kept = rows[one];
        rows[one] = rows[two];
        rows[two] = kept;
    }
}
