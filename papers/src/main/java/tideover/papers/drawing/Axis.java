package tideover.papers.drawing;

/**
 * A conductor seen along its way: u runs from the grid onwards, v to its left. Symbols are drawn once and stand on
 * conductors that run to the right or upwards.
 */
public final class Axis {

    /** Which way the conductor runs on the sheet. */
    public enum Way {
        RIGHT,
        UP
    }

    private final Pen pen;
    private final double x;
    private final double y;
    private final Way way;
    private final Ink ink;
    private final Weight weight;

    public Axis(Pen pen, double x, double y, Way way, Ink ink, Weight weight) {
        this.pen = pen;
        this.x = x;
        this.y = y;
        this.way = way;
        this.ink = ink;
        this.weight = weight;
    }

    /** The same conductor from a point further on. */
    public Axis at(double u) {
        return new Axis(pen, x(u, 0), y(u, 0), way, ink, weight);
    }

    private double x(double u, double v) {
        return way == Way.RIGHT ? x + u : x - v;
    }

    private double y(double u, double v) {
        return way == Way.RIGHT ? y - v : y - u;
    }

    private double[] placed(double... uv) {
        double[] xy = new double[uv.length];
        for (int i = 0; i < uv.length; i += 2) {
            xy[i] = x(uv[i], uv[i + 1]);
            xy[i + 1] = y(uv[i], uv[i + 1]);
        }
        return xy;
    }

    /** The conductor itself, in its own weight. */
    public void wire(double from, double to) {
        if (to > from) pen.line(ink, weight, placed(from, 0, to, 0));
    }

    /** A part of a symbol; keeps the dashes of a dead conductor away from small figures. */
    public void line(double... uv) {
        pen.line(ink, symbolWeight(), placed(uv));
    }

    public void area(double... uv) {
        pen.area(ink, placed(uv));
    }

    public void curve(double... uv) {
        pen.curve(ink, symbolWeight(), placed(uv));
    }

    public void ellipse(double u, double v, double ru, double rv) {
        boolean right = way == Way.RIGHT;
        pen.ellipse(ink, symbolWeight(), x(u, v), y(u, v), right ? ru : rv, right ? rv : ru);
    }

    /** A filled disc. */
    public void dot(double u, double v, double r) {
        double[] ring = new double[24];
        for (int i = 0; i < 12; i++) {
            ring[2 * i] = u + r * Math.cos(Math.PI * i / 6);
            ring[2 * i + 1] = v + r * Math.sin(Math.PI * i / 6);
        }
        area(ring);
    }

    /** Text centred on a point of the symbol. */
    public void text(double u, double v, double size, String text) {
        pen.text(ink, Pen.Face.REGULAR, size, Pen.Anchor.MIDDLE, x(u, v), y(u, v) + size * 0.34, text);
    }

    private Weight symbolWeight() {
        return weight == Weight.DEAD ? Weight.HAIR : weight == Weight.STRONG ? Weight.NORMAL : weight;
    }
}
