package tideover.papers.terminals;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Boxes, the places at their edges and what runs between them; the layout fills in where. */
final class Web {

    /** Which edge of a box. */
    enum Edge {
        LEFT,
        RIGHT,
        UPPER,
        LOWER
    }

    /** Which way the web grows. */
    enum Growth {
        RIGHT,
        UP
    }

    /** A box. */
    static final class Box {
        final double width;
        final double height;

        /** Boxes of a lower rank stand earlier; all of one rank stand apart from those of others. */
        final int rank;

        double x;
        double y;

        Box(double width, double height, int rank) {
            this.width = width;
            this.height = height;
            this.rank = rank;
        }
    }

    /** A place at the edge of a box. Lines that share it are joined there. */
    static final class Place {
        final Box box;
        final Edge edge;

        /** From the upper or left end of the edge; negative: wherever the layout likes. */
        final double offset;

        Place(Box box, Edge edge, double offset) {
            this.box = box;
            this.edge = edge;
            this.offset = offset;
        }
    }

    /** A line between two places, with words on it. */
    static final class Line {
        final Place from;
        final Place to;
        final List<String> words;
        final double wordsWidth;

        /** x and y in turn. */
        double[] way = {};

        double wordsX;
        double wordsY;

        Line(Place from, Place to, List<String> words, double wordsWidth) {
            this.from = from;
            this.to = to;
            this.words = List.copyOf(words);
            this.wordsWidth = wordsWidth;
        }
    }

    private static final double AROUND = 3;
    private static final double TIGHT = 1;
    private static final double LOOSE = 2;

    final Growth growth;
    final List<Box> boxes = new ArrayList<>();
    final List<Line> lines = new ArrayList<>();
    double width;
    double height;

    Web(Growth growth) {
        this.growth = growth;
    }

    Box box(double boxWidth, double boxHeight, int rank) {
        Box box = new Box(boxWidth, boxHeight, rank);
        boxes.add(box);
        return box;
    }

    /** Lays it out on the smallest sheet, as loose as that allows, in the middle of it. */
    Paper layOut() {
        WebLayout.place(this, TIGHT);
        Paper paper = Paper.fitting(width + 2 * AROUND, height + 2 * AROUND);
        WebLayout.place(this, LOOSE);
        if (!paper.holds(width + 2 * AROUND, height + 2 * AROUND)) WebLayout.place(this, TIGHT);
        move(
                Paper.LEFT + (paper.right() - Paper.LEFT - width) / 2,
                Paper.MARGIN + (paper.bottom() - Paper.MARGIN - height) / 2);
        return paper;
    }

    /** Parted into sheets: all of it on one if that is no larger than A3, else as many connected parts on each as it holds. */
    List<Web> sheets() {
        List<Web> sheets = new ArrayList<>();
        Web sheet = new Web(growth);
        for (Web part : parts()) {
            Web more = sheet.with(part);
            if (!sheet.boxes.isEmpty() && !more.isSmall()) {
                sheets.add(sheet);
                more = part;
            }
            sheet = more;
        }
        if (!sheet.boxes.isEmpty()) sheets.add(sheet);
        return sheets;
    }

    private boolean isSmall() {
        WebLayout.place(this, TIGHT);
        return Paper.A3.holds(width + 2 * AROUND, height + 2 * AROUND);
    }

    private Web with(Web other) {
        Web both = new Web(growth);
        both.boxes.addAll(boxes);
        both.boxes.addAll(other.boxes);
        both.lines.addAll(lines);
        both.lines.addAll(other.lines);
        return both;
    }

    /** Its connected parts. */
    private List<Web> parts() {
        List<Web> parts = new ArrayList<>();
        Set<Box> waiting = new LinkedHashSet<>(boxes);
        while (!waiting.isEmpty()) {
            Set<Box> joined = new LinkedHashSet<>();
            joined.add(waiting.iterator().next());
            int size = 0;
            while (joined.size() > size) {
                size = joined.size();
                for (Line line : lines)
                    if (joined.contains(line.from.box) || joined.contains(line.to.box)) {
                        joined.add(line.from.box);
                        joined.add(line.to.box);
                    }
            }
            Web part = new Web(growth);
            for (Box box : boxes) if (joined.contains(box)) part.boxes.add(box);
            for (Line line : lines) if (joined.contains(line.from.box)) part.lines.add(line);
            parts.add(part);
            waiting.removeAll(joined);
        }
        return parts;
    }

    /** Moves everything. */
    private void move(double dx, double dy) {
        for (Box box : boxes) {
            box.x += dx;
            box.y += dy;
        }
        for (Line line : lines) {
            line.wordsX += dx;
            line.wordsY += dy;
            for (int i = 0; i < line.way.length; i += 2) {
                line.way[i] += dx;
                line.way[i + 1] += dy;
            }
        }
    }
}
