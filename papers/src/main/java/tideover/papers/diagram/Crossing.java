package tideover.papers.diagram;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.ByPass;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.papers.diagram.Graph.Node;
import tideover.papers.drawing.Axis;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Symbols;
import tideover.papers.drawing.Symbols.Mark;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** An islanding switch or a by-pass on the double line, perhaps with another one beside it. */
final class Crossing {

    /** Room above the line for what stands on it [mm]. */
    static final double ABOVE = 15.5;

    /** Room below the line [mm]. */
    static final double BELOW = 10.5;

    /** Half the gap in the double line [mm]. */
    static final double HALF_GAP = 4;

    /** Where one beside it leaves and joins the upright, above and below the line [mm]. */
    private static final double JOINS_ABOVE = 14;

    private static final double JOINS_BELOW = 6;
    private static final double APART = 9;

    /** Where its words begin: beside the upright, and the base line of what is noted below the line [mm]. */
    private static final double RIGHT = 2.5;

    private static final double NOTE = 4.5;

    private final Thing thing;
    private final Labels labels;
    private @Nullable Node exit;
    private @Nullable Node entry;
    private @Nullable Crossing beside;

    Crossing(Thing thing, Labels labels) {
        this.thing = thing;
        this.labels = labels;
    }

    Thing thing() {
        return thing;
    }

    /** Where its conductor leaves the grid side; nothing where it is not known what feeds it. */
    @Nullable
    Node exit() {
        return exit;
    }

    void exit(Node node) {
        exit = node;
    }

    /** Where its conductor begins on the island side. */
    Node entry() {
        return Objects.requireNonNull(entry);
    }

    void entry(Node node) {
        entry = node;
    }

    /** Puts a by-pass beside it that leaves and joins the same conductors. */
    void beside(Crossing byPass) {
        if (beside == null) beside = byPass;
        else beside.beside(byPass);
    }

    /** Where the double line is broken, the upright being at {@code x}. */
    List<Double> gaps(double x, Look look) {
        List<Double> gaps = new ArrayList<>();
        gaps.add(x);
        if (beside != null) gaps.addAll(beside.gaps(besideX(x, look), look));
        return gaps;
    }

    /** How far to the right its labels reach, the upright being at {@code x}. */
    double right(double x, Look look) {
        return beside == null ? besideX(x, look) : beside.right(besideX(x, look), look);
    }

    /** Paints it where the upright at {@code x} meets the double line at {@code y}. */
    void paint(Pen pen, Look look, double x, double y, Stroke below, Stroke above) {
        pen.begin("thing-" + thing.id(), thing.id(), labels.name(thing));
        pen.reach(x - RIGHT, y - JOINS_ABOVE, words(look).width() + 2 * RIGHT, JOINS_ABOVE + JOINS_BELOW);
        boolean dead = below.weight() == Weight.DEAD && above.weight() == Weight.DEAD;
        Axis at = new Axis(pen, x, y + HALF_GAP, Axis.Way.UP, dead ? Ink.DEAD : Ink.BLACK, Weight.NORMAL);
        Mark mark = thing instanceof IslandingSwitch ? Mark.CONTACTOR : Mark.SWITCH_DISCONNECTOR;
        Symbols.contact(at, mark, look.position(thing));
        List<String> lines = lines(look);
        double baseline = y - 2 - lines.size() * Type.LEADING;
        new Words(List.of(labels.name(thing)), lines, List.of()).paint(pen, x + RIGHT, baseline);
        for (String note : labels.note(thing))
            pen.text(Ink.PENCIL, Face.REGULAR, Type.SIZE, Pen.Anchor.START, x + RIGHT, y + NOTE, note);
        pen.end();
        if (beside == null) return;
        double next = besideX(x, look);
        double low = y + JOINS_BELOW;
        double high = y - JOINS_ABOVE;
        pen.line(below.ink(), below.weight(), x, low, next, low, next, y + HALF_GAP);
        pen.line(above.ink(), above.weight(), next, y - HALF_GAP, next, high, x, high);
        beside.paint(pen, look, next, y, below, above);
    }

    private double besideX(double x, Look look) {
        return x + words(look).width() + APART;
    }

    private Words words(Look look) {
        return new Words(List.of(labels.name(thing)), lines(look), labels.note(thing));
    }

    private List<String> lines(Look look) {
        List<String> lines = thing instanceof IslandingSwitch device
                ? data(device, labels)
                : List.of(labels.word(((ByPass) thing).kind()), poles(((ByPass) thing).poles(), labels));
        if (!look.isInState()) return lines;
        List<String> inState = new ArrayList<>(lines);
        String position = labels.text("diagram.position." + look.position(thing).name());
        inState.set(inState.size() - 1, inState.get(inState.size() - 1) + " · " + position);
        return inState;
    }

    /** What stands beside an islanding switch. */
    static List<String> data(IslandingSwitch device, Labels labels) {
        String first = labels.word(device.kind()) + " · " + labels.amount(device.ratedCurrentA(), Unit.A);
        ThingId inverter = device.builtInto();
        if (inverter != null) first = labels.text("diagram.builtInto", labels.name(inverter));
        return List.of(first, poles(device.poles(), labels));
    }

    private static String poles(@Nullable Integer poles, Labels labels) {
        return poles == null
                ? labels.text("diagram.polesUnknown")
                : labels.wording().text("diagram.poles", PhraseArg.count(poles));
    }
}
