package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Unit;
import tideover.engine.site.Isolator;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.Supply;
import tideover.papers.drawing.Axis;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Symbols;
import tideover.papers.drawing.Symbols.Mark;
import tideover.papers.drawing.Type;

/** The grid connection point with its main fuse and the point where it is isolated. */
final class SupplyBox extends Box {

    private static final double ABOVE = 5;
    private static final double BELOW = 6.6;
    private static final double TEXT_WIDTH = 36;

    private final Supply supply;
    private final Labels labels;
    private final List<Isolator> isolators;
    private final Words words;

    private SupplyBox(Supply supply, Labels labels, List<Isolator> isolators, Words words) {
        super(
                Math.max(TEXT_WIDTH, 17 + isolators.size() * Symbols.CONTACT) + 1.5,
                ABOVE + BELOW + words.drop() + 2.4,
                ABOVE);
        this.supply = supply;
        this.labels = labels;
        this.isolators = isolators;
        this.words = words;
    }

    static SupplyBox of(Supply supply, Labels labels) {
        List<Isolator> isolators = labels.isolators(supply.id());
        List<String> name = Type.wrapped(Face.BOLD, Type.SIZE, labels.name(supply), TEXT_WIDTH);
        List<String> data = new ArrayList<>();
        data.add(labels.word(supply.earthingSystem()) + " " + labels.voltage(supply));
        data.add(labels.text("diagram.mainFuse", labels.overcurrent(supply.mainFuse())));
        if (supply.loopImpedanceOhm() != null)
            data.add(labels.text("diagram.loop", labels.amount(supply.loopImpedanceOhm(), Unit.OHM)));
        if (supply.prospectiveCurrentA() != null)
            data.add(labels.text("diagram.prospective", labels.amount(supply.prospectiveCurrentA(), Unit.A)));
        for (Isolator isolator : isolators)
            data.addAll(Type.wrapped(Face.REGULAR, Type.SIZE, labels.name(isolator), TEXT_WIDTH));
        List<String> note = Words.wrapped(labels.note(supply), TEXT_WIDTH);
        return new SupplyBox(supply, labels, isolators, new Words(name, data, note));
    }

    @Override
    void paint(Pen pen, Look look, double x, double y) {
        double line = y + axis();
        Axis at = new Axis(pen, x, line, Axis.Way.RIGHT, look.ink(supply, Side.GRID), look.weight(supply));
        pen.begin("thing-" + supply.id(), supply.id(), labels.name(supply));
        pen.reach(x, y, width(), height());
        double u = Symbols.network(at);
        OvercurrentDevice fuse = supply.mainFuse();
        if (fuse != null)
            u += fuse.kind() == OvercurrentKind.FUSE
                    ? Symbols.fuse(at.at(u))
                    : Symbols.contact(at.at(u), Mark.BREAKER, look.handPosition());
        for (int i = 0; i < isolators.size(); i++)
            u += Symbols.contact(at.at(u), Mark.SWITCH_DISCONNECTOR, look.handPosition());
        at.at(u).wire(0, width() - u);
        words.paint(pen, x + 0.5, line + BELOW);
        pen.end();
    }
}
