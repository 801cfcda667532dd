package tideover.papers.diagram;

import java.util.List;
import java.util.Optional;
import tideover.engine.installation.Installation;
import tideover.engine.site.Conductor;
import tideover.engine.site.OperatingState;
import tideover.engine.site.ThingId;
import tideover.papers.Stamp;
import tideover.papers.drawing.Axis;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Symbols;
import tideover.papers.drawing.Symbols.Mark;
import tideover.papers.drawing.Symbols.Position;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** The strip at the foot of the sheet: legend left, title block right (fields after ISO 7200). */
final class Strip {

    private static final double TITLE = 150;
    private static final double ROW = 4.9;
    private static final double SYMBOL = 12;

    private final Pen pen;
    private final Labels labels;
    private final double left;
    private final double top;
    private final double right;

    Strip(Pen pen, Labels labels, Sheet.Format format) {
        this.pen = pen;
        this.labels = labels;
        this.left = Sheet.LEFT;
        this.right = format.width - Sheet.MARGIN;
        this.top = format.height - Sheet.MARGIN - Sheet.STRIP;
    }

    void paint(Installation installation, Optional<OperatingState> state, Stamp stamp, Sheet.Format format) {
        pen.line(Ink.BLACK, Weight.NORMAL, left, top, right, top);
        pen.line(Ink.BLACK, Weight.NORMAL, right - TITLE, top, right - TITLE, top + Sheet.STRIP);
        legend(state.isPresent());
        title(installation, state, stamp, format);
    }

    private void title(Installation installation, Optional<OperatingState> state, Stamp stamp, Sheet.Format format) {
        double x = right - TITLE + 3;
        String site = labels.name(ThingId.PLACE);
        pen.text(Ink.BLACK, Face.BOLD, 4.6, Anchor.START, x, top + 6.2, Type.fitted(Face.BOLD, 4.6, site, TITLE - 50));
        pen.text(Ink.BLACK, Face.REGULAR, 3.4, Anchor.START, x, top + 11.2, labels.text("diagram.title"));
        String shown =
                state.map(s -> labels.text("diagram.state", labels.word(s))).orElse(labels.text("diagram.state.none"));
        pen.text(Ink.BLACK, Face.BOLD, 3.4, Anchor.START, x, top + 15.8, shown);
        List<ThingId> sources = state.map(s -> installation.in(s).sources()).orElse(List.of());
        String live = state.isEmpty()
                ? labels.text("diagram.live.none")
                : sources.isEmpty()
                        ? labels.text("diagram.live.nothing")
                        : labels.text("diagram.live", labels.wording().names(sources));
        pen.text(
                Ink.BLACK,
                Face.REGULAR,
                Type.SIZE,
                Anchor.START,
                x,
                top + 20.2,
                Type.fitted(Face.REGULAR, Type.SIZE, live, TITLE - 6));
        double end = right - 3;
        field(end, top + 5.4, labels.text("diagram.revision", stamp.revision().shortened()));
        field(end, top + 10, labels.text("diagram.date", stamp.date().toString()));
        field(end, top + 14.6, labels.text("diagram.sheet", format.name()));
    }

    private void field(double x, double y, String text) {
        pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Anchor.END, x, y, text);
    }

    private void legend(boolean inState) {
        Position hand = inState ? Position.CLOSED : Position.OPEN;
        double column = (right - TITLE - left - 4) / 4;
        double x = left + 4;
        pen.fill(Ink.ISLAND, x, y(0) - 1.3, 9, 2.6);
        word(x, 0, "diagram.legend.island");
        pen.hatch(Ink.GRID, x, y(1) - 1.3, 9, 2.6, 1.2);
        word(x, 1, "diagram.legend.grid");
        pen.line(Ink.BLACK, inState ? Weight.STRONG : Weight.NORMAL, x, y(2), x + 9, y(2));
        word(x, 2, inState ? "diagram.legend.live" : "diagram.legend.conductor");
        if (inState) {
            pen.line(Ink.DEAD, Weight.DEAD, x, y(3), x + 9, y(3));
            word(x, 3, "diagram.legend.dead");
        } else {
            pen.line(Ink.BLACK, Weight.BUS, x, y(3), x + 9, y(3));
            word(x, 3, "diagram.legend.busbar");
        }
        x += column;
        Symbols.contact(axis(x, 0), Mark.BREAKER, hand);
        word(x, 0, "diagram.legend.breaker");
        Symbols.fuse(axis(x, 1));
        word(x, 1, "diagram.legend.fuse");
        Symbols.rcd(axis(x, 2), hand);
        word(x, 2, "diagram.legend.rcd");
        Symbols.contact(axis(x, 3), Mark.SWITCH_DISCONNECTOR, hand);
        word(x, 3, "diagram.legend.disconnector");
        x += column;
        Symbols.contact(axis(x, 0), Mark.CONTACTOR, Position.OPEN);
        word(x, 0, "diagram.legend.open");
        Symbols.contact(axis(x, 1), Mark.CONTACTOR, Position.CLOSED);
        word(x, 1, "diagram.legend.closed");
        Symbols.strokes(axis(x, 2), List.of(Conductor.L1, Conductor.N, Conductor.PE));
        word(x, 2, "diagram.legend.strokes");
        Symbols.strokes(axis(x, 3), List.of(Conductor.L1, Conductor.PEN));
        word(x, 3, "diagram.legend.pen");
        x += column;
        pen.text(Ink.PENCIL, Face.REGULAR, Type.SIZE, Anchor.START, x + 3, y(0) + 1, "?");
        word(x, 0, "diagram.legend.unknown");
        double width = column - 3;
        double baseline = y(1) + 1;
        for (String line : Type.wrapped(Face.BOLD, Type.SIZE, labels.text("diagram.caution"), width)) {
            pen.text(Ink.STOP, Face.BOLD, Type.SIZE, Anchor.START, x, baseline, line);
            baseline += Type.LEADING;
        }
    }

    private double y(int row) {
        return top + 4.4 + row * ROW;
    }

    private Axis axis(double x, int row) {
        return new Axis(pen, x, y(row), Axis.Way.RIGHT, Ink.BLACK, Weight.NORMAL);
    }

    private void word(double x, int row, String key) {
        pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Anchor.START, x + SYMBOL, y(row) + 1, labels.text(key));
    }
}
