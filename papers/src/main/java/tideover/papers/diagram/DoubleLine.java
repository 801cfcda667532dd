package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.site.Thing;
import tideover.papers.diagram.Graph.Node;
import tideover.papers.diagram.Graph.Wire;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** Paints the double line across the sheet with the islanding switches and by-passes that stand on it. */
final class DoubleLine {

    private final Pen pen;
    private final Look look;
    private final Sheet sheet;
    private final double lineY;

    DoubleLine(Pen pen, Look look, Sheet sheet) {
        this.pen = pen;
        this.look = look;
        this.sheet = sheet;
        this.lineY = sheet.lineY();
    }

    void paint(Labels labels) {
        captions(labels, crossings(), sheet.format().width - Sheet.MARGIN - 2);
    }

    /** @return how far to the right they reach [mm] */
    private double crossings() {
        double right = sheet.format().width - Sheet.MARGIN;
        List<Crossing> all = sheet.sides().crossings();
        double[] uprights = new double[all.size()];
        double free = Sheet.LEFT + Sheet.BAR + Sheet.INSIDE;
        for (int i = 0; i < uprights.length; i++) {
            uprights[i] = Math.max(sheet.upright(all.get(i)), free);
            free = all.get(i).right(uprights[i], look);
        }
        double beyond = Math.max(0, free - right);
        List<Double> gaps = new ArrayList<>();
        for (int i = 0; i < uprights.length; i++) {
            uprights[i] -= beyond;
            gaps.addAll(all.get(i).gaps(uprights[i], look));
        }
        doubleLine(gaps, right);
        for (int i = 0; i < uprights.length; i++) crossing(all.get(i), uprights[i], i);
        return free - beyond;
    }

    private void crossing(Crossing crossing, double x, int index) {
        Thing thing = crossing.thing();
        Stroke above = Stroke.of(look, Side.ISLAND, thing);
        Node entry = crossing.entry();
        double upright = sheet.upright(crossing);
        double turn = lineY - Crossing.ABOVE + 0.6;
        pen.line(
                above.ink(),
                above.weight(),
                x,
                lineY - Crossing.HALF_GAP,
                x,
                turn,
                upright,
                turn,
                upright,
                entry.axisY());
        Node exit = crossing.exit();
        Stroke below = new Stroke(Ink.GRID, Weight.NORMAL);
        if (exit != null) {
            below = below(exit);
            // Each in its own channel, so that ways to several crossings do not lie on one another.
            double channel = lineY + 8.6 - 1.3 * (index % 2);
            pen.line(
                    below.ink(),
                    below.weight(),
                    exit.x,
                    exit.axisY(),
                    exit.x,
                    channel,
                    x,
                    channel,
                    x,
                    lineY + Crossing.HALF_GAP);
        }
        crossing.paint(pen, look, x, lineY, below, above);
    }

    /** A crossing has voltage below the line where what feeds it has. */
    private Stroke below(Node exit) {
        for (Wire wire : sheet.sides().graph(Side.GRID).wires())
            if (wire.to == exit) return Stroke.of(look, Side.GRID, wire.thing);
        return new Stroke(Ink.GRID, Weight.NORMAL);
    }

    private void doubleLine(List<Double> gaps, double right) {
        double from = Sheet.LEFT;
        for (double gap : gaps.stream().sorted().toList()) {
            doubleLine(from, gap - 2.6);
            from = gap + 1.6;
        }
        doubleLine(from, right);
    }

    private void doubleLine(double from, double to) {
        if (to <= from) return;
        pen.fill(Ink.BLACK, from, lineY - 0.9, to - from, 0.5);
        pen.fill(Ink.BLACK, from, lineY + 0.4, to - from, 0.5);
    }

    /** What the line means, where there is room beside what stands on it. */
    private void captions(Labels labels, double taken, double right) {
        String above = labels.text(sheet.sides().crossings().isEmpty() ? "diagram.above.none" : "diagram.above");
        String below = labels.text("diagram.below");
        if (right - Math.max(width(above), width(below)) < taken) return;
        pen.text(Ink.ISLAND, Pen.Face.BOLD, Type.SIZE, Pen.Anchor.END, right, lineY - 2.6, above);
        pen.text(Ink.GRID, Pen.Face.BOLD, Type.SIZE, Pen.Anchor.END, right, lineY + 4.6, below);
    }

    private static double width(String caption) {
        return Type.width(Pen.Face.BOLD, Type.SIZE, caption);
    }
}
