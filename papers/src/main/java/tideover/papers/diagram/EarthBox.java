package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.site.Conductor;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.Thing;
import tideover.papers.drawing.Axis;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Symbols;
import tideover.papers.drawing.Symbols.Mark;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** A way to earth: a neutral–earth link or switch, the main earthing terminal, an electrode of its own. */
final class EarthBox extends Box {

    private final List<Thing> things;
    private final Conductor conductor;
    private final Labels labels;
    private final Words words;
    private final double symbols;

    /**
     * @param things    whose way it is; the first one is the device, if there is one
     * @param conductor N for a link, PE for the earthing conductor
     * @param width     where name and data are broken into lines [mm]
     */
    static EarthBox of(
            List<Thing> things, Conductor conductor, Labels labels, String name, List<String> data, double width) {
        List<String> notes = new ArrayList<>();
        for (Thing thing : things) notes.addAll(labels.note(thing));
        return new EarthBox(
                things,
                conductor,
                labels,
                new Words(
                        Type.wrapped(Face.BOLD, Type.SIZE, name, width),
                        Words.wrapped(data, width),
                        Words.wrapped(notes, width)));
    }

    private EarthBox(List<Thing> things, Conductor conductor, Labels labels, Words words) {
        super(
                symbols(things) + words.width() + 2,
                Math.max(6.5, words.lines() * Type.LEADING + 2),
                Math.max(3.2, words.lines() * Type.LEADING / 2 + 1));
        this.things = things;
        this.conductor = conductor;
        this.labels = labels;
        this.words = words;
        this.symbols = symbols(things);
    }

    private static double symbols(List<Thing> things) {
        return 1 + (hasContact(things) ? Symbols.CONTACT : 0) + 4 + 5 + 1.5;
    }

    private static boolean hasContact(List<Thing> things) {
        return !things.isEmpty() && things.get(0) instanceof NeutralEarthSwitch;
    }

    @Override
    void paint(Pen pen, Look look, double x, double y) {
        double line = y + axis();
        Axis at = new Axis(pen, x, line, Axis.Way.RIGHT, Ink.BLACK, Weight.NORMAL);
        for (Thing thing : things) pen.begin("thing-" + thing.id(), thing.id(), labels.name(thing));
        pen.reach(x, y, width(), height());
        double u = 1;
        at.wire(0, u);
        if (hasContact(things)) u += Symbols.contact(at.at(u), Mark.CONTACTOR, look.position(things.get(0)));
        double drawn = Symbols.strokes(at.at(u), List.of(conductor));
        at.at(u).wire(drawn, 4);
        Symbols.earth(at.at(u + 4));
        words.paint(pen, x + symbols, line - words.lines() * Type.LEADING / 2 + 2.8);
        for (int i = 0; i < things.size(); i++) pen.end();
    }
}
