package tideover.papers.curves;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Unit;
import tideover.papers.Wording;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** The double logarithmic ruling with its scales, and the marks of single currents above it. */
final class Ruling {

    /** Between the marks above the scale, at least [mm]. */
    private static final double BETWEEN = 3;

    private final Pen pen;
    private final Wording wording;
    private final List<List<double[]>> rows = new ArrayList<>();

    Ruling(Pen pen, Wording wording) {
        this.pen = pen;
        this.wording = wording;
    }

    void paint() {
        for (double decade = Scales.SMALLEST_A; decade < Scales.LARGEST_A; decade *= 10)
            for (int i = 1; i < 10 && i * decade <= Scales.LARGEST_A; i++) {
                double x = Scales.x(i * decade);
                pen.line(Ink.RULE, i == 1 ? Weight.HAIR : Weight.FINE, x, Scales.TOP, x, Scales.BOTTOM);
                if (i == 1 || i == 2 || i == 5)
                    text(Anchor.MIDDLE, x, Scales.BOTTOM + 4.2, wording.amount(i * decade, Unit.A));
            }
        for (int power = -2; power <= 4; power++)
            for (int i = 1; i < 10 && (power < 4 || i == 1); i++) {
                double timeS = i * Math.pow(10, power);
                double y = Scales.y(timeS);
                pen.line(Ink.RULE, i == 1 ? Weight.HAIR : Weight.FINE, Scales.LEFT, y, Scales.RIGHT, y);
                if (i == 1)
                    text(
                            Anchor.END,
                            Scales.LEFT - 1.5,
                            y + 1,
                            wording.text("curves.seconds", wording.amount(timeS, Unit.RATIO)));
            }
        pen.box(
                Ink.BLACK,
                Weight.NORMAL,
                Scales.LEFT,
                Scales.TOP,
                Scales.RIGHT - Scales.LEFT,
                Scales.BOTTOM - Scales.TOP);
        text(Anchor.END, Scales.RIGHT, Scales.BOTTOM + 8.6, wording.text("curves.current"));
        text(Anchor.START, Scales.LEFT - 11, Scales.TOP - 3.4, wording.text("curves.time"));
    }

    /** An upright line at a current with its name above the scale, in the lowest row in which there is room. */
    void current(Ink ink, Weight weight, double currentA, double downToS, String name) {
        double x = Scales.x(currentA);
        double half = Type.width(Face.REGULAR, Type.SIZE, name) / 2;
        double middle = Math.max(Scales.LEFT + half, x);
        int row = 0;
        while (row < rows.size() && isTaken(rows.get(row), middle - half, middle + half)) row++;
        if (row == rows.size()) rows.add(new ArrayList<>());
        rows.get(row).add(new double[] {middle - half, middle + half});
        double y = Scales.TOP - 3.4 - Type.LEADING * (row + 1);
        pen.line(ink, weight, x, y + 1, x, Scales.y(downToS));
        pen.text(ink, Face.REGULAR, Type.SIZE, Anchor.MIDDLE, middle, y, name);
    }

    private static boolean isTaken(List<double[]> row, double from, double to) {
        return row.stream().anyMatch(taken -> from < taken[1] + BETWEEN && to > taken[0] - BETWEEN);
    }

    private void text(Anchor anchor, double x, double y, String text) {
        pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, anchor, x, y, text);
    }
}
