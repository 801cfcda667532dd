package tideover.papers.diagram;

import tideover.engine.site.Thing;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Weight;

/** How a conductor is drawn. */
record Stroke(Ink ink, Weight weight) {

    /** How the conductors at a thing are drawn. */
    static Stroke of(Look look, Side side, Thing thing) {
        return new Stroke(look.ink(thing, side), look.weight(thing));
    }
}
