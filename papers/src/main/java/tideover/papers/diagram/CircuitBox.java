package tideover.papers.diagram;

import java.util.List;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Load;
import tideover.engine.site.LoadKind;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.papers.drawing.Axis;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Symbols;
import tideover.papers.drawing.Symbols.Mark;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** A circuit as one row: device, RCD, conductors, cable, load, name, lines, and the mark of its side. */
final class CircuitBox extends Box {

    /** The columns all circuits of a sheet share. */
    static final class Columns {
        private static final double STROKES = 9.6;
        private static final double LOAD = 5.5;
        private static final double GAP = 1.6;
        private static final double WIDEST_NAME = 58;
        private static final double WIDEST_NOTE = 36;

        static final double MARK = 9;

        private final double device;
        private final double residual;
        private final double cable;
        private final double name;
        private final double lines;
        private final double note;

        Columns(List<Circuit> circuits, Labels labels) {
            double d = 4, r = 0, c = 8, n = 20, l = 4, p = 0;
            for (Circuit circuit : circuits) {
                d = Math.max(d, width(labels.overcurrent(circuit.protection())));
                if (circuit.rcd() != null) r = Math.max(r, 4 + width(labels.residual(circuit.rcd())) + GAP);
                c = Math.max(c, width(labels.cable(circuit)));
                n = Math.max(n, Math.min(WIDEST_NAME, width(nameAndCaution(circuit, labels))));
                l = Math.max(l, width(labels.lines(circuit)));
                p = Math.max(p, Math.min(WIDEST_NOTE, Words.stepped(labels.note(circuit))));
            }
            device = d;
            residual = r;
            cable = c;
            name = n;
            lines = l;
            note = p == 0 ? 0 : p + GAP;
        }

        double width() {
            return Symbols.CONTACT
                    + device
                    + GAP
                    + residual
                    + STROKES
                    + cable
                    + GAP
                    + LOAD
                    + 1
                    + name
                    + 2 * GAP
                    + lines
                    + GAP
                    + note
                    + MARK;
        }

        private static double width(String text) {
            return Type.width(Face.REGULAR, Type.SIZE, text);
        }
    }

    private final Circuit circuit;
    private final Side side;
    private final Labels labels;
    private final Columns columns;
    private final List<String> name;
    private final List<String> note;

    /**
     * @param pitch height of a row of one line [mm]
     * @param above room left above it, where a group begins [mm]
     */
    CircuitBox(Circuit circuit, Side side, Labels labels, Columns columns, double pitch, double above) {
        super(
                columns.width(),
                above + pitch + (rows(circuit, labels, columns) - 1) * Type.LEADING,
                above + pitch / 2 + 0.9);
        this.circuit = circuit;
        this.side = side;
        this.labels = labels;
        this.columns = columns;
        this.name = named(circuit, labels, columns);
        this.note = noted(circuit, labels, columns);
    }

    private static int rows(Circuit circuit, Labels labels, Columns columns) {
        return Math.max(
                named(circuit, labels, columns).size(),
                noted(circuit, labels, columns).size());
    }

    private static List<String> noted(Circuit circuit, Labels labels, Columns columns) {
        return Words.wrapped(labels.note(circuit), columns.note);
    }

    private static String nameAndCaution(Circuit circuit, Labels labels) {
        String caution = labels.caution(circuit);
        return labels.name(circuit) + (caution.isEmpty() ? "" : " · " + caution);
    }

    private static List<String> named(Circuit circuit, Labels labels, Columns columns) {
        return Type.wrapped(Face.REGULAR, Type.SIZE, nameAndCaution(circuit, labels), columns.name + 0.01);
    }

    @Override
    void paint(Pen pen, Look look, double x, double y) {
        double line = y + axis();
        Ink ink = look.ink(circuit, side);
        Weight weight = look.weight(circuit);
        Axis at = new Axis(pen, x, line, Axis.Way.RIGHT, ink, weight);
        pen.begin("thing-" + circuit.id(), circuit.id(), labels.name(circuit));
        pen.reach(x, y, width(), height());

        double u = device(at, look);
        u = above(pen, at, x, line, u, labels.overcurrent(circuit.protection()), columns.device + Columns.GAP);
        if (circuit.rcd() != null) {
            Symbols.residualRing(at.at(u));
            above(pen, at, x, line, u + 4, labels.residual(circuit.rcd()), columns.residual - 4);
            at.at(u).wire(3.4, columns.residual);
        } else {
            at.at(u).wire(0, columns.residual);
        }
        u += columns.residual;
        List<Conductor> conductors = circuit.conductors();
        double drawn = conductors == null ? 0 : Symbols.strokes(at.at(u), conductors);
        at.at(u).wire(drawn, Columns.STROKES);
        u += Columns.STROKES;
        u = above(pen, at, x, line, u, labels.cable(circuit), columns.cable + Columns.GAP);
        Load load = circuit.load();
        LoadKind kind = load == null ? null : load.kind();
        u += kind == null ? unknownLoad(pen, at, x + u, line) : Symbols.load(at.at(u), kind);
        text(pen, x + u + 1, line + 1);
        String lines = labels.lines(circuit);
        double right = x + width() - Columns.MARK;
        double noted = right - columns.note;
        pen.text(ink, Face.REGULAR, Type.SIZE, Anchor.END, noted - Columns.GAP, line + 1, lines);
        for (int i = 0; i < note.size(); i++)
            pen.text(
                    Ink.PENCIL, Face.REGULAR, Type.SIZE, Anchor.START, noted, line + 1 + i * Type.LEADING, note.get(i));
        mark(pen, look, right, line);
        pen.end();
    }

    private double device(Axis at, Look look) {
        OvercurrentDevice device = circuit.protection();
        if (device != null && device.kind() == OvercurrentKind.FUSE) return Symbols.fuse(at);
        return Symbols.contact(at, device == null ? Mark.NONE : Mark.BREAKER, look.handPosition());
    }

    /** Text that stands on the conductor; returns where the conductor goes on. */
    private static double above(Pen pen, Axis at, double x, double line, double u, String text, double width) {
        at.at(u).wire(0, width);
        Ink ink = text.contains("?") ? Ink.PENCIL : Ink.BLACK;
        pen.text(ink, Face.REGULAR, Type.SIZE, Anchor.START, x + u, line - 0.9, text);
        return u + width;
    }

    private static double unknownLoad(Pen pen, Axis at, double x, double line) {
        at.wire(0, 0);
        pen.text(Ink.PENCIL, Face.REGULAR, Type.SIZE, Anchor.MIDDLE, x + 2.75, line + 1, "?");
        return Columns.LOAD;
    }

    private void text(Pen pen, double x, double baseline) {
        String caution = labels.caution(circuit);
        for (int i = 0; i < name.size(); i++)
            pen.text(
                    caution.isEmpty() ? Ink.BLACK : Ink.STOP,
                    caution.isEmpty() ? Face.REGULAR : Face.BOLD,
                    Type.SIZE,
                    Anchor.START,
                    x,
                    baseline + i * Type.LEADING,
                    name.get(i));
    }

    /** Filled where the circuit is on the island side, hatched where it is not; the lines alone live stand in it. */
    private void mark(Pen pen, Look look, double x, double line) {
        List<Conductor> only = look.onlyLiveLines(circuit);
        if (!only.isEmpty()) {
            String live = String.join(" ", only.stream().map(labels::word).toList()) + "!";
            pen.text(Ink.STOP, Face.BOLD, Type.SIZE, Anchor.END, x + Columns.MARK, line + 1, live);
        } else if (labels.staysOn(circuit)) {
            pen.fill(Ink.ISLAND, x, line - 1.3, Columns.MARK, 2.6);
        } else {
            pen.hatch(Ink.GRID, x, line - 1.3, Columns.MARK, 2.6, 1.2);
        }
    }
}
