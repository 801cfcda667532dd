package tideover.papers.diagram;

import tideover.papers.drawing.Pen;

/** Where a conductor leaves one side for the other: a point on the way to the double line. */
final class PointBox extends Box {

    PointBox() {
        super(0.1, 0.1, 0.05);
    }

    @Override
    void paint(Pen pen, Look look, double x, double y) {
        // Only a place: the crossing itself is painted with the double line.
    }
}
