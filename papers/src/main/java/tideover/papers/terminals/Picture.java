package tideover.papers.terminals;

import tideover.papers.drawing.Axis;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Symbols;
import tideover.papers.drawing.Symbols.Mark;
import tideover.papers.drawing.Symbols.Position;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** What lies between the two terminals of a row. */
enum Picture {
    /** A bar or a clamp to which all conductors of the row are joined. */
    BAR,
    /** Nothing that switches. */
    THROUGH,
    MAIN_CONTACT,
    HAND_SWITCH,
    BREAKER,
    FUSE,
    RESIDUAL,
    METER,
    COIL,
    MAKE,
    BREAK,
    /** A contact inside a device, joined while the request or report is on. */
    OUTPUT_CONTACT,
    SUPPLY,
    /** Terminals that are not joined inside. */
    NONE;

    /** Draws it between two points of one level line [mm]. */
    void paint(Pen pen, Ink ink, double left, double right, double y) {
        if (this == NONE) return;
        if (this == BAR) {
            pen.line(ink, Weight.BUS, left, y, right, y);
            return;
        }
        if (this == SUPPLY) {
            double middle = (left + right) / 2;
            pen.text(ink, Pen.Face.BOLD, Type.SIZE, Pen.Anchor.MIDDLE, middle - 4, y + 1, "+");
            pen.text(ink, Pen.Face.BOLD, Type.SIZE, Pen.Anchor.MIDDLE, middle + 4, y + 1, "−");
            pen.line(ink, Weight.NORMAL, left, y, middle - 6, y);
            pen.line(ink, Weight.NORMAL, middle + 6, y, right, y);
            return;
        }
        double begin = (left + right - length()) / 2;
        Axis axis = new Axis(pen, begin, y, Axis.Way.RIGHT, ink, Weight.NORMAL);
        pen.line(ink, Weight.NORMAL, left, y, begin, y);
        symbol(axis);
        pen.line(ink, Weight.NORMAL, begin + length(), y, right, y);
    }

    /** Length of its symbol [mm]. */
    private double length() {
        return switch (this) {
            case RESIDUAL -> Symbols.RCD;
            case METER -> Symbols.METER;
            default -> Symbols.CONTACT;
        };
    }

    private void symbol(Axis axis) {
        switch (this) {
            case MAIN_CONTACT -> Symbols.contact(axis, Mark.CONTACTOR, Position.OPEN);
            case HAND_SWITCH -> Symbols.contact(axis, Mark.SWITCH_DISCONNECTOR, Position.OPEN);
            case BREAKER -> Symbols.contact(axis, Mark.BREAKER, Position.OPEN);
            case MAKE, OUTPUT_CONTACT -> Symbols.contact(axis, Mark.NONE, Position.OPEN);
            case BREAK -> Symbols.breakContact(axis);
            case FUSE -> Symbols.fuse(axis);
            case RESIDUAL -> Symbols.rcd(axis, Position.OPEN);
            case METER -> Symbols.meter(axis);
            case COIL -> Symbols.coil(axis);
            default -> axis.wire(0, Symbols.CONTACT);
        }
    }
}
