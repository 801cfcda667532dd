package tideover.papers.diagram;

import java.util.List;
import tideover.engine.site.Thing;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Type;

/** A thing that has no place in the drawing because a fact about its place is missing. */
final class NoteBox extends Box {

    private final Thing thing;
    private final Labels labels;
    private final String name;
    private final String note;

    private NoteBox(Thing thing, Labels labels, String name, String note) {
        super(
                Math.max(Words.widest(Face.BOLD, List.of(name)), Words.widest(Face.REGULAR, List.of(note))) + 2,
                2 * Type.LEADING + 2.5,
                Type.LEADING);
        this.thing = thing;
        this.labels = labels;
        this.name = name;
        this.note = note;
    }

    static NoteBox of(Thing thing, Labels labels) {
        return new NoteBox(thing, labels, labels.name(thing), labels.text("diagram.placeUnknown"));
    }

    @Override
    void paint(Pen pen, Look look, double x, double y) {
        pen.begin("thing-" + thing.id(), thing.id(), labels.name(thing));
        pen.reach(x, y, width(), height());
        pen.text(Ink.BLACK, Face.BOLD, Type.SIZE, Anchor.START, x, y + 3.4, name);
        pen.text(Ink.PENCIL, Face.REGULAR, Type.SIZE, Anchor.START, x, y + 3.4 + Type.LEADING, note);
        pen.end();
    }
}
