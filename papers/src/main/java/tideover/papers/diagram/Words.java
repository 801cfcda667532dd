package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Type;

/**
 * What stands at a thing, line by line.
 *
 * @param name bold
 * @param data its facts
 * @param note what the program notes, in pencil
 */
record Words(List<String> name, List<String> data, List<String> note) {

    private static final double STEP = 4;

    Words {
        name = List.copyOf(name);
        data = List.copyOf(data);
        note = List.copyOf(note);
    }

    /** Lines no wider than this [mm] where their words allow. */
    static List<String> wrapped(List<String> lines, double width) {
        List<String> wrapped = new ArrayList<>();
        for (String line : lines) wrapped.addAll(Type.wrapped(Face.REGULAR, Type.SIZE, line, width));
        return wrapped;
    }

    int lines() {
        return name.size() + data.size() + note.size();
    }

    /** Room for the widest line [mm]. */
    double width() {
        return Math.max(widest(Face.BOLD, name), Math.max(widest(Face.REGULAR, data), stepped(note)));
    }

    /** Room for notes, in steps: they change with every load, and the drawing is not to move with each [mm]. */
    static double stepped(List<String> note) {
        return STEP * Math.ceil(widest(Face.REGULAR, note) / STEP);
    }

    /** From the first base line to the last [mm]. */
    double drop() {
        return (lines() - 1) * Type.LEADING;
    }

    /** Downwards from a base line. */
    void paint(Pen pen, double x, double baseline) {
        double y = paint(pen, Ink.BLACK, Face.BOLD, x, baseline, name);
        y = paint(pen, Ink.BLACK, Face.REGULAR, x, y, data);
        paint(pen, Ink.PENCIL, Face.REGULAR, x, y, note);
    }

    private static double paint(Pen pen, Ink ink, Face face, double x, double baseline, List<String> lines) {
        double y = baseline;
        for (String line : lines) {
            pen.text(ink, face, Type.SIZE, Anchor.START, x, y, line);
            y += Type.LEADING;
        }
        return y;
    }

    static double widest(Face face, List<String> lines) {
        return lines.stream()
                .mapToDouble(line -> Type.width(face, Type.SIZE, line))
                .max()
                .orElse(0);
    }
}
