package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Unit;
import tideover.engine.site.Board;
import tideover.engine.site.Fed;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Meter;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.ResidualDevice;
import tideover.engine.site.SurgeProtection;
import tideover.papers.drawing.Axis;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Symbols;
import tideover.papers.drawing.Symbols.Mark;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** A meter, fuse, board or RCD group in the path: symbols on the conductor, cable above it, name and data below. */
final class DeviceBox extends Box {

    private static final double ABOVE = 4.6;
    private static final double ABOVE_WITH_CABLE = 7.2;
    private static final double BELOW = 6.2;

    private final Fed thing;
    private final Side side;
    private final Labels labels;
    private final String cable;
    private final Words words;

    private DeviceBox(Fed thing, Side side, Labels labels, Words words, double width) {
        super(width, above(thing, labels) + BELOW + words.drop() + 2.4, above(thing, labels));
        this.thing = thing;
        this.side = side;
        this.labels = labels;
        this.cable = labels.cable(thing);
        this.words = words;
    }

    /** @param textWidth where names and data are broken into lines [mm] */
    static DeviceBox of(Fed thing, Side side, Labels labels, double textWidth) {
        double symbols = symbolLength(thing);
        double wide = Math.max(textWidth, symbols);
        List<String> name = Type.wrapped(Face.BOLD, Type.SIZE, labels.name(thing), wide);
        List<String> data = new ArrayList<>();
        for (String line : data(thing, labels)) data.addAll(Type.wrapped(Face.REGULAR, Type.SIZE, line, wide));
        Words words = new Words(name, data, Words.wrapped(labels.note(thing), wide));
        double cable = Type.width(Face.REGULAR, Type.SIZE, labels.cable(thing));
        return new DeviceBox(thing, side, labels, words, Math.max(Math.max(words.width(), cable), symbols) + 1.5);
    }

    private static double above(Fed thing, Labels labels) {
        return labels.cable(thing).isEmpty() ? ABOVE : ABOVE_WITH_CABLE;
    }

    private static double symbolLength(Fed thing) {
        double length = 1;
        if (thing.protection() != null) length += Symbols.CONTACT;
        if (thing.rcd() != null) length += Symbols.RCD;
        if (thing instanceof Meter) length += Symbols.METER;
        if (thing instanceof Board) length += 10;
        if (thing instanceof IslandingSwitch) length += Symbols.CONTACT;
        return length;
    }

    private static List<String> data(Fed thing, Labels labels) {
        List<String> data = new ArrayList<>();
        OvercurrentDevice protection = thing.protection();
        if (protection != null) data.add(labels.overcurrent(protection));
        ResidualDevice rcd = thing.rcd();
        if (rcd != null) data.add(labels.residualWithRating(rcd));
        if (thing instanceof Board board) {
            if (board.mainSwitchRatedCurrentA() != null)
                data.add(labels.text("diagram.mainSwitch", labels.amount(board.mainSwitchRatedCurrentA(), Unit.A)));
            data.add(labels.text("diagram.busbar", labels.amount(board.busbarRatedCurrentA(), Unit.A)));
            SurgeProtection surge = board.surgeProtection();
            if (surge != null && surge != SurgeProtection.NONE)
                data.add(labels.text("diagram.spd", labels.word(surge)));
        }
        if (thing instanceof Meter meter) {
            data.add(labels.word(meter.connection()) + " " + labels.amount(meter.ratedCurrentA(), Unit.A));
            String neutral = labels.measuringNeutral(meter);
            if (!neutral.isEmpty()) data.add(neutral);
        }
        if (thing instanceof IslandingSwitch device) data.addAll(Crossing.data(device, labels));
        String caution = labels.caution(thing);
        if (!caution.isEmpty()) data.add(caution);
        return data;
    }

    @Override
    void paint(Pen pen, Look look, double x, double y) {
        double line = y + axis();
        Ink ink = look.ink(thing, side);
        Weight weight = look.weight(thing);
        Axis at = new Axis(pen, x, line, Axis.Way.RIGHT, ink, weight);
        pen.begin("thing-" + thing.id(), thing.id(), labels.name(thing));
        pen.reach(x, y, width(), height());
        double u = 1;
        at.wire(0, u);
        OvercurrentDevice protection = thing.protection();
        if (protection != null)
            u += protection.kind() == OvercurrentKind.FUSE
                    ? Symbols.fuse(at.at(u))
                    : Symbols.contact(at.at(u), Mark.BREAKER, look.handPosition());
        if (thing.rcd() != null) u += Symbols.rcd(at.at(u), look.handPosition());
        if (thing instanceof Meter) u += Symbols.meter(at.at(u));
        if (thing instanceof IslandingSwitch) u += Symbols.contact(at.at(u), Mark.CONTACTOR, look.position(thing));
        if (thing instanceof Board) {
            at.line(u, -2.4, u + 10, -2.4, u + 10, 2.4, u, 2.4, u, -2.4);
            at.wire(u, width());
        } else {
            at.at(u).wire(0, width() - u);
        }
        pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Pen.Anchor.START, x + 0.5, line - 3.6, cable);
        words.paint(pen, x + 0.5, line + BELOW);
        pen.end();
    }
}
