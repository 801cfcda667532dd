package tideover.papers.terminals;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.papers.Wording;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** Paints rows of a device: its frame in the middle of the sheet, conductors and where they go on both sides. */
final class Card {

    /** Name of the device above its frame [mm]. */
    static final double NAME = 8;

    /** Words at both edges of the frame above the first row [mm]. */
    static final double SIDES = 6;

    static final double BELOW = 6;

    private static final double INDENT = 3;
    private static final double FRAME = 70;
    private static final double TERMINAL = 0.9;
    private static final double ABOVE_WIRE = 4.6;
    private static final double BELOW_WIRE = 4.4;
    private static final double UNDER_HEADING = 1;
    private static final double BRANCH = 2.6;

    private final Wording wording;
    private final double begin = Paper.LEFT + INDENT;
    private final double end = Paper.A4.right() - INDENT;
    private final double left = (begin + end - FRAME) / 2;
    private final double right = left + FRAME;
    private final double room = left - begin - BRANCH - 1;

    Card(Wording wording) {
        this.wording = wording;
    }

    /** Height of a row [mm]. */
    double height(Row row) {
        return above(row) + Math.max(height(row.left()), height(row.right()));
    }

    private double above(Row row) {
        List<String> heading = heading(row);
        return heading.isEmpty() ? 0 : heading.size() * Type.LEADING + UNDER_HEADING;
    }

    private double height(@Nullable Post post) {
        if (post == null || post.leads().isEmpty()) return ABOVE_WIRE + BELOW_WIRE;
        return post.leads().stream().mapToDouble(this::height).sum();
    }

    private double height(Lead lead) {
        return ABOVE_WIRE + BELOW_WIRE + (below(lead).size() - 1) * Type.LEADING;
    }

    private List<String> heading(Row row) {
        return row.heading().isEmpty()
                ? List.of()
                : Type.wrapped(Face.REGULAR, Type.SIZE, row.heading(), FRAME - 2 * INDENT);
    }

    /** Whether mark and look fit above the wire. */
    private boolean isShort(Lead lead) {
        return Type.width(Face.BOLD, Type.SIZE, lead.mark() + "  ") + Type.width(Face.REGULAR, Type.SIZE, lead.look())
                < room;
    }

    private List<String> below(Lead lead) {
        List<String> below = new ArrayList<>();
        if (!isShort(lead)) below.addAll(Type.wrapped(Face.REGULAR, Type.SIZE, lead.look(), room));
        below.addAll(Type.wrapped(Face.REGULAR, Type.SIZE, lead.end(), room));
        return below;
    }

    /** Name above the frame. @return where the frame begins */
    double name(Pen pen, Device device, double y, String continued) {
        String name = device.name() + continued;
        pen.text(
                Ink.BLACK,
                Face.BOLD,
                4.4,
                Anchor.START,
                begin,
                y + 5.4,
                Type.fitted(Face.BOLD, 4.4, name, end - begin));
        return y + NAME;
    }

    void frame(Pen pen, double top, double bottom) {
        pen.box(Ink.BLACK, Weight.NORMAL, left, top, FRAME, bottom - top);
    }

    /** What the two edges of the frame are. */
    void sides(Pen pen, Device.Sides sides, double top) {
        double y = top + 4.2;
        if (sides == Device.Sides.GRID_AND_ISLAND) {
            pen.hatch(Ink.GRID, left + 1.5, y - 2.2, 6, 2.4, 1.2);
            pen.fill(Ink.ISLAND, right - 7.5, y - 2.2, 6, 2.4);
        }
        double inset = sides == Device.Sides.GRID_AND_ISLAND ? 9 : 2;
        String key = "terminals.sides." + sides.name();
        pen.text(Ink.BLACK, Face.BOLD, Type.SIZE, Anchor.START, left + inset, y, wording.text(key + ".left"));
        pen.text(Ink.BLACK, Face.BOLD, Type.SIZE, Anchor.END, right - inset, y, wording.text(key + ".right"));
    }

    /** One row, with a rule above it where it begins something new. */
    void row(Pen pen, Row row, double top, boolean rule) {
        if (rule) pen.line(Ink.BLACK, Weight.HAIR, left, top, right, top);
        double y = top;
        for (String line : heading(row)) {
            y += Type.LEADING;
            pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Anchor.START, left + INDENT, y, line);
        }
        double wire = y + ABOVE_WIRE + (y > top ? UNDER_HEADING : 0);
        if (row.picture() != Picture.NONE)
            row.picture()
                    .paint(
                            pen,
                            Ink.BLACK,
                            row.left() == null ? left + INDENT : left + TERMINAL,
                            row.right() == null ? right - INDENT : right - TERMINAL,
                            wire);
        if (row.left() != null) post(pen, row.left(), Way.LEFT, wire);
        if (row.right() != null) post(pen, row.right(), Way.RIGHT, wire);
    }

    /** The middle of the contact of a row that begins here [mm]. */
    double wireY(Row row, double top) {
        return top + above(row) + ABOVE_WIRE;
    }

    /** The double line between two heights. */
    void doubleLine(Pen pen, double from, double to) {
        double middle = (left + right) / 2;
        for (double x : new double[] {middle - 0.6, middle + 0.6}) pen.line(Ink.BLACK, Weight.NORMAL, x, from, x, to);
    }

    private enum Way {
        LEFT,
        RIGHT
    }

    private void post(Pen pen, Post post, Way way, double wire) {
        double edge = way == Way.LEFT ? left : right;
        double outwards = way == Way.LEFT ? -1 : 1;
        pen.ellipse(Ink.BLACK, Weight.NORMAL, edge, wire, TERMINAL, TERMINAL);
        pen.text(
                Ink.BLACK,
                Face.BOLD,
                Type.SIZE,
                way == Way.LEFT ? Anchor.START : Anchor.END,
                edge - outwards * 2.2,
                wire - 1,
                post.name());
        pen.text(
                Ink.BLACK,
                Face.REGULAR,
                Type.SIZE,
                way == Way.LEFT ? Anchor.START : Anchor.END,
                edge - outwards * 2.2,
                wire + 3.1,
                post.note());
        if (post.leads().isEmpty()) {
            pen.text(
                    Ink.PENCIL,
                    Face.REGULAR,
                    Type.SIZE,
                    way == Way.LEFT ? Anchor.END : Anchor.START,
                    edge + outwards * BRANCH,
                    wire + 1,
                    wording.text("terminals.free"));
            return;
        }
        double y = wire;
        double last = wire;
        double branch = edge + outwards * BRANCH;
        double x = way == Way.LEFT ? begin : branch;
        for (Lead lead : post.leads()) {
            pen.line(
                    Ink.BLACK,
                    Weight.NORMAL,
                    y == wire ? edge + outwards * TERMINAL : branch,
                    y,
                    way == Way.LEFT ? begin : end,
                    y);
            lead(pen, lead, x, y);
            last = y;
            y += height(lead);
        }
        if (last > wire) pen.line(Ink.BLACK, Weight.NORMAL, branch, wire, branch, last);
    }

    private void lead(Pen pen, Lead lead, double x, double y) {
        double inset = x == begin ? x : x + 1;
        pen.text(Ink.BLACK, Face.BOLD, Type.SIZE, Anchor.START, inset, y - 1, lead.mark());
        if (isShort(lead))
            pen.text(
                    Ink.BLACK,
                    Face.REGULAR,
                    Type.SIZE,
                    Anchor.START,
                    inset + Type.width(Face.BOLD, Type.SIZE, lead.mark() + "  "),
                    y - 1,
                    lead.look());
        double line = y + 3.1;
        for (String text : below(lead)) {
            pen.text(
                    Ink.BLACK,
                    Face.REGULAR,
                    Type.SIZE,
                    Anchor.START,
                    inset,
                    line,
                    Type.fitted(Face.REGULAR, Type.SIZE, text, room));
            line += Type.LEADING;
        }
    }
}
