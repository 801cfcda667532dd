package tideover.papers.terminals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import tideover.papers.Wording;
import tideover.papers.drawing.Pen;

/** Sets the cards of all devices on pages of A4, one below the other; a device too long for a page goes on on the next. */
final class CardPages {

    private static final double TOP = Paper.MARGIN + 2;
    private static final double BOTTOM = Paper.A4.bottom() - 3;

    /** Less of a long device than this is not begun at the foot of a page [mm]. */
    private static final double LEAST = 70;

    /** Some rows of a device on one page. */
    static final class Piece {
        final Device device;

        /** Row of the device with which it begins. */
        final int first;

        final List<Row> rows;
        final double top;

        private Piece(Device device, int first, List<Row> rows, double top) {
            this.device = device;
            this.first = first;
            this.rows = rows;
            this.top = top;
        }
    }

    private final Wording wording;
    private final Card card;
    private final List<List<Piece>> pages = new ArrayList<>();
    private double y = BOTTOM;

    CardPages(List<Device> devices, Wording wording) {
        this.wording = wording;
        this.card = new Card(wording);
        devices.forEach(this::set);
    }

    List<List<Piece>> pages() {
        return pages;
    }

    private static List<Row> rows(Device device) {
        return Stream.concat(device.power().stream(), device.control().stream()).toList();
    }

    private double head(Device device, int first) {
        return Card.NAME + (hasSides(device, first) ? Card.SIDES : 1);
    }

    private static boolean hasSides(Device device, int first) {
        return device.sides() != Device.Sides.NONE && first < device.power().size();
    }

    private void set(Device device) {
        List<Row> rows = rows(device);
        double whole = head(device, 0) + height(rows) + Card.BELOW;
        boolean fitsOnAPage = whole <= BOTTOM - TOP;
        if (y + whole > BOTTOM && (fitsOnAPage || BOTTOM - y < LEAST)) turn();
        int first = 0;
        while (first < rows.size()) {
            double free = BOTTOM - y - head(device, first) - 2;
            int last = first;
            double used = 0;
            while (last < rows.size() && (last == first || used + card.height(rows.get(last)) <= free))
                used += card.height(rows.get(last++));
            pages.get(pages.size() - 1).add(new Piece(device, first, rows.subList(first, last), y));
            y += head(device, first) + used + Card.BELOW;
            first = last;
            if (first < rows.size()) turn();
        }
    }

    private double height(List<Row> rows) {
        return rows.stream().mapToDouble(card::height).sum();
    }

    private void turn() {
        pages.add(new ArrayList<>());
        y = TOP;
    }

    void paint(Pen pen, List<Piece> page) {
        for (Piece piece : page) paint(pen, piece);
    }

    private void paint(Pen pen, Piece piece) {
        Device device = piece.device;
        pen.begin("device-" + device.id() + (piece.first == 0 ? "" : "-" + piece.first), device.id(), device.name());
        double top =
                card.name(pen, device, piece.top, piece.first == 0 ? "" : " " + wording.text("terminals.continued"));
        double at = top + 1;
        if (hasSides(device, piece.first)) {
            card.sides(pen, device.sides(), top);
            at = top + Card.SIDES;
        }
        double line = at;
        int index = piece.first;
        for (Row row : piece.rows) {
            boolean begins = index == device.power().size() || !row.heading().isEmpty();
            card.row(pen, row, at, begins && index > piece.first);
            if (device.sides() == Device.Sides.GRID_AND_ISLAND
                    && index < device.power().size()) {
                double wire = card.wireY(row, at);
                boolean crosses = row.picture() != Picture.NONE;
                card.doubleLine(pen, line, crosses ? wire - 2.6 : at + card.height(row));
                line = crosses ? wire + 2.6 : at + card.height(row);
            }
            at += card.height(row);
            index++;
            if (device.sides() == Device.Sides.GRID_AND_ISLAND
                    && index == device.power().size()) card.doubleLine(pen, line, at);
        }
        card.frame(pen, top, at);
        pen.end();
    }
}
