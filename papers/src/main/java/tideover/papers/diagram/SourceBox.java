package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Unit;
import tideover.engine.site.Battery;
import tideover.engine.site.Isolator;
import tideover.engine.site.PvArray;
import tideover.engine.site.Thing;
import tideover.papers.drawing.Axis;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Symbols;
import tideover.papers.drawing.Symbols.Mark;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/**
 * A battery or PV modules, before their inverter. Always drawn as live: modules are while there is light, batteries
 * always, in every operating state.
 */
final class SourceBox extends Box {

    private static final double TEXT_WIDTH = 34;

    private final Thing source;
    private final Side side;
    private final Labels labels;
    private final List<Isolator> isolators;
    private final List<String> name;
    private final List<String> data;
    private final double text;

    private SourceBox(
            Thing source, Side side, Labels labels, List<Isolator> isolators, List<String> name, List<String> data) {
        super(
                textWidth(name, data) + 8.5 + isolators.size() * Symbols.CONTACT,
                Math.max(9, (name.size() + data.size()) * Type.LEADING + 2.5),
                Math.max(5.5, (name.size() + data.size()) * Type.LEADING / 2 + 1));
        this.source = source;
        this.side = side;
        this.labels = labels;
        this.isolators = isolators;
        this.name = name;
        this.data = data;
        this.text = textWidth(name, data);
    }

    static SourceBox of(Thing source, Side side, Labels labels) {
        List<String> data = new ArrayList<>();
        if (source instanceof PvArray array)
            data.add(labels.text("diagram.peak", labels.amount(array.peakPowerW(), Unit.W)));
        if (source instanceof Battery battery) data.add(labels.amount(battery.usableEnergyWh(), Unit.WH));
        List<Isolator> isolators = labels.isolators(source.id());
        for (Isolator isolator : isolators)
            data.addAll(Type.wrapped(Face.REGULAR, Type.SIZE, labels.name(isolator), TEXT_WIDTH));
        List<String> name = Type.wrapped(Face.BOLD, Type.SIZE, labels.name(source), TEXT_WIDTH);
        return new SourceBox(source, side, labels, isolators, name, data);
    }

    private static double textWidth(List<String> name, List<String> data) {
        return Math.max(widest(Face.BOLD, name), widest(Face.REGULAR, data));
    }

    @Override
    void paint(Pen pen, Look look, double x, double y) {
        double line = y + axis();
        Weight weight = look.isInState() ? Weight.STRONG : Weight.NORMAL;
        Axis at = new Axis(pen, x + text + 1.5, line, Axis.Way.RIGHT, side.ink(), weight);
        pen.begin("thing-" + source.id(), labels.name(source));
        double u = source instanceof Battery ? Symbols.battery(at) : Symbols.photovoltaic(at);
        for (int i = 0; i < isolators.size(); i++)
            u += Symbols.contact(at.at(u), Mark.SWITCH_DISCONNECTOR, look.handPosition());
        double baseline = line - (name.size() + data.size()) * Type.LEADING / 2 + 2.7;
        for (String part : name) {
            pen.text(Ink.BLACK, Face.BOLD, Type.SIZE, Anchor.START, x, baseline, part);
            baseline += Type.LEADING;
        }
        for (String part : data) {
            pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Anchor.START, x, baseline, part);
            baseline += Type.LEADING;
        }
        pen.end();
    }
}
