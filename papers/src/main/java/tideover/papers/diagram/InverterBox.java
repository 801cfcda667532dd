package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.site.Conductor;
import tideover.engine.site.Inverter;
import tideover.engine.site.Isolator;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.ResidualDevice;
import tideover.papers.drawing.Axis;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Symbols;
import tideover.papers.drawing.Symbols.Mark;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** An inverter: batteries and modules enter left, its supply cable leaves right towards where it is connected. */
final class InverterBox extends Box {

    private static final double ABOVE = 7.2;
    private static final double BELOW = 8.6;
    private static final double TEXT_WIDTH = 44;
    private static final double SQUARE = 9;
    private static final double STROKES = 9.6;

    private final Inverter inverter;
    private final Side side;
    private final Labels labels;
    private final List<Isolator> isolators;
    private final int inputs;
    private final Words words;

    private InverterBox(
            Inverter inverter, Side side, Labels labels, List<Isolator> isolators, int inputs, Words words) {
        super(width(inverter, labels, isolators, words), ABOVE + BELOW + words.drop() + 2.4, ABOVE);
        this.inverter = inverter;
        this.side = side;
        this.labels = labels;
        this.isolators = isolators;
        this.inputs = inputs;
        this.words = words;
    }

    /** @param inputs batteries and arrays connected to it */
    static InverterBox of(Inverter inverter, Side side, Labels labels, int inputs) {
        List<String> name = Type.wrapped(Face.BOLD, Type.SIZE, labels.name(inverter), TEXT_WIDTH);
        List<String> data = new ArrayList<>();
        data.add(labels.inverterPower(inverter));
        data.add(labels.word(inverter.role()));
        List<Isolator> isolators = labels.isolators(inverter.id());
        for (Isolator isolator : isolators)
            data.addAll(Type.wrapped(Face.REGULAR, Type.SIZE, labels.name(isolator), TEXT_WIDTH));
        List<String> feeder = new ArrayList<>();
        OvercurrentDevice protection = inverter.protection();
        if (protection != null) feeder.add(labels.overcurrent(protection));
        ResidualDevice rcd = inverter.rcd();
        if (rcd != null) feeder.add(labels.residualWithRating(rcd));
        if (!feeder.isEmpty()) data.add(labels.text("diagram.atBoard", String.join(" ", feeder)));
        String caution = labels.caution(inverter);
        if (!caution.isEmpty()) data.addAll(Type.wrapped(Face.REGULAR, Type.SIZE, caution, TEXT_WIDTH));
        List<String> note = Words.wrapped(labels.note(inverter), TEXT_WIDTH);
        return new InverterBox(inverter, side, labels, isolators, inputs, new Words(name, data, note));
    }

    private static double width(Inverter inverter, Labels labels, List<Isolator> isolators, Words words) {
        double cable = SQUARE + 1 + Type.width(Face.REGULAR, Type.SIZE, labels.cable(inverter));
        double symbols = SQUARE
                + isolators.size() * Symbols.CONTACT
                + STROKES
                + Symbols.CONTACT
                + (inverter.rcd() == null ? 0 : Symbols.RCD);
        return Math.max(Math.max(symbols, cable), words.width()) + 1;
    }

    @Override
    List<Double> inputs() {
        if (inputs < 2) return List.of(axis());
        List<Double> all = new ArrayList<>();
        for (int i = 0; i < inputs; i++) all.add(axis() - 3.4 + 6.8 * i / (inputs - 1));
        return all;
    }

    @Override
    void paint(Pen pen, Look look, double x, double y) {
        double line = y + axis();
        Ink ink = look.ink(inverter, side);
        Weight weight = look.weight(inverter);
        Axis at = new Axis(pen, x, line, Axis.Way.RIGHT, ink, weight);
        pen.begin("thing-" + inverter.id(), inverter.id(), labels.name(inverter));
        pen.reach(x, y, width(), height());
        double u = Symbols.inverter(at);
        for (int i = 0; i < isolators.size(); i++)
            u += Symbols.contact(at.at(u), Mark.SWITCH_DISCONNECTOR, look.handPosition());
        List<Conductor> conductors = inverter.conductors();
        double drawn = conductors == null ? 0 : Symbols.strokes(at.at(u), conductors);
        pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Anchor.START, x + SQUARE + 1, line - 3.6, labels.cable(inverter));
        // Its device sits at the board: seen from there it is the first thing on the cable.
        OvercurrentDevice protection = inverter.protection();
        double end = width();
        double devices = (protection == null ? 0 : Symbols.CONTACT) + (inverter.rcd() == null ? 0 : Symbols.RCD);
        at.at(u).wire(drawn, end - devices - u);
        u = end - devices;
        if (inverter.rcd() != null) u += Symbols.rcd(at.at(u), look.handPosition());
        if (protection != null) {
            Axis device = at.at(u);
            if (protection.kind() == OvercurrentKind.FUSE) Symbols.fuse(device);
            else Symbols.contact(device, Mark.BREAKER, look.handPosition());
        }
        words.paint(pen, x, line + BELOW);
        pen.end();
    }
}
