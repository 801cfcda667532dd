package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Unit;
import tideover.engine.site.Battery;
import tideover.engine.site.Isolator;
import tideover.engine.site.PvArray;
import tideover.engine.site.Thing;
import tideover.papers.drawing.Axis;
import tideover.papers.drawing.Pen;
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
    private final Words words;

    private SourceBox(Thing source, Side side, Labels labels, List<Isolator> isolators, Words words) {
        super(
                words.width() + 8.5 + isolators.size() * Symbols.CONTACT,
                Math.max(9, words.lines() * Type.LEADING + 2.5),
                Math.max(5.5, words.lines() * Type.LEADING / 2 + 1));
        this.source = source;
        this.side = side;
        this.labels = labels;
        this.isolators = isolators;
        this.words = words;
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
        List<String> note = Words.wrapped(labels.note(source), TEXT_WIDTH);
        return new SourceBox(source, side, labels, isolators, new Words(name, data, note));
    }

    @Override
    void paint(Pen pen, Look look, double x, double y) {
        double line = y + axis();
        Weight weight = look.isInState() ? Weight.STRONG : Weight.NORMAL;
        Axis at = new Axis(pen, x + words.width() + 1.5, line, Axis.Way.RIGHT, side.ink(), weight);
        pen.begin("thing-" + source.id(), source.id(), labels.name(source));
        pen.reach(x, y, width(), height());
        double u = source instanceof Battery ? Symbols.battery(at) : Symbols.photovoltaic(at);
        for (int i = 0; i < isolators.size(); i++)
            u += Symbols.contact(at.at(u), Mark.SWITCH_DISCONNECTOR, look.handPosition());
        words.paint(pen, x, line - words.lines() * Type.LEADING / 2 + 2.7);
        pen.end();
    }
}
