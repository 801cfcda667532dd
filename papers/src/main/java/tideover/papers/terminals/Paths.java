package tideover.papers.terminals;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.installation.control.Wire;
import tideover.engine.site.BusPort;
import tideover.engine.site.BusRole;
import tideover.engine.site.ControlPort;
import tideover.engine.site.Port;
import tideover.engine.site.PortKind;
import tideover.engine.site.SignalForm;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.schedule.ControlSchedule;
import tideover.engine.wiring.schedule.CoreRow;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/**
 * The control wiring as current paths: from where plus comes, through contacts, to coils and inputs, and back. Every port
 * is a box with its symbol, every core a line with its mark; buses stand beside them.
 */
final class Paths {

    private static final double WIDTH = 31;
    private static final double TAG = 4.6;
    private static final double PITCH = 10;
    private static final double TERMINAL = 0.8;
    private static final int LAST = 2;

    /** A box with the terminals at its edges. */
    private record Box(
            Web.Box at,
            ThingId device,
            String tag,
            List<String> heading,
            List<String> left,
            List<String> right,
            Picture picture) {}

    private final ControlCards cards;
    private final LeadWords words;
    private final Net distances;
    private final Map<ThingId, String> tags;
    private final Web web = new Web(Web.Growth.RIGHT);
    private final List<Box> boxes = new ArrayList<>();
    private final Map<TerminalId, Web.Place> places = new LinkedHashMap<>();
    private final Map<Web, Paper> sheets = new LinkedHashMap<>();

    /** @param tags short names of devices */
    Paths(ControlNet net, ControlSchedule schedule, ControlCards cards, LeadWords words, Map<ThingId, String> tags) {
        this.cards = cards;
        this.words = words;
        this.distances = new Net(net);
        this.tags = tags;
        for (ControlPort port : net.controlPorts()) if (!distances.isFree(port)) add(port);
        for (BusPort port : net.busPorts()) if (!distances.isFree(port)) add(port);
        for (Wire wire : net.wires()) line(wire, schedule);
        for (Web sheet : web.sheets()) sheets.put(sheet, sheet.layOut());
    }

    /** Its sheets with their size. */
    Map<Web, Paper> sheets() {
        return sheets;
    }

    private void add(ControlPort port) {
        List<String> names = cards.names(port);
        if (port.kind() == PortKind.SUPPLY) {
            box(port, cards.brief(port), List.of(), names.subList(0, Math.min(1, names.size())), Picture.NONE, 0);
            if (names.size() > 1)
                box(port, cards.brief(port), names.subList(1, names.size()), List.of(), Picture.NONE, LAST);
            return;
        }
        List<String> left = new ArrayList<>();
        List<String> right = new ArrayList<>();
        if (names.size() == 1)
            (port.kind() == PortKind.OUTPUT && port.form() != SignalForm.MINUS ? right : left).add(names.get(0));
        for (int i = 0; i + 1 < names.size(); i += 2) {
            boolean turned = distances.distance(port.terminal(names.get(i)))
                    > distances.distance(port.terminal(names.get(i + 1)));
            left.add(names.get(turned ? i + 1 : i));
            right.add(names.get(turned ? i : i + 1));
        }
        Picture picture = ControlCards.picture(port, right.isEmpty() ? null : new Post(right.get(0), "", List.of()));
        box(port, cards.brief(port), left, right, picture, 1);
    }

    private void add(BusPort port) {
        List<String> first = cards.names(port);
        List<String> onwards = ControlCards.onwards(port);
        boolean asks = port.role() == BusRole.CLIENT;
        box(port, cards.heading(port), asks ? onwards : first, asks ? first : onwards, Picture.NONE, 1);
    }

    private void box(Port port, String words, List<String> left, List<String> right, Picture picture, int rank) {
        List<String> heading = Type.wrapped(Face.REGULAR, Type.SIZE, words, WIDTH - 3);
        int rows = Math.max(1, Math.max(left.size(), right.size()));
        Web.Box at = web.box(WIDTH, TAG + heading.size() * Type.LEADING + (rows - 1) * PITCH + 6, rank);
        ThingId device = ControlCards.place(port);
        boxes.add(new Box(at, device, tags.getOrDefault(device, device.text()), heading, left, right, picture));
        for (int i = 0; i < left.size(); i++)
            places.put(port.terminal(left.get(i)), new Web.Place(at, Web.Edge.LEFT, y(heading, i)));
        for (int i = 0; i < right.size(); i++)
            places.put(port.terminal(right.get(i)), new Web.Place(at, Web.Edge.RIGHT, y(heading, i)));
    }

    /** Where a row of terminals lies in its box. */
    private static double y(List<String> heading, int row) {
        return TAG + heading.size() * Type.LEADING + 4 + row * PITCH;
    }

    private void line(Wire wire, ControlSchedule schedule) {
        TerminalId from = wire.core().from();
        TerminalId to = wire.core().to();
        if (from == null || to == null) return;
        boolean turned = distances.distance(from) > distances.distance(to);
        Web.Place begin = places.get(turned ? to : from);
        Web.Place end = places.get(turned ? from : to);
        if (begin == null || end == null) return;
        List<String> said = schedule.find(wire.cable().id(), wire.position())
                .map(this::said)
                .orElse(List.of());
        double width = 0;
        for (String line : said) width = Math.max(width, Type.width(Face.REGULAR, Type.SIZE, line));
        web.lines.add(new Web.Line(begin, end, said, width + 1));
    }

    private List<String> said(CoreRow row) {
        return List.of(row.designation(), words.mark(row));
    }

    void paint(Pen pen, Web sheet) {
        for (Box box : boxes) if (sheet.boxes.contains(box.at())) paint(pen, box);
        for (Web.Line line : sheet.lines) {
            pen.line(Ink.BLACK, Weight.NORMAL, line.way);
            double y = line.wordsY + 2.9;
            for (String word : line.words) {
                pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Anchor.START, line.wordsX + 0.5, y, word);
                y += Type.LEADING;
            }
        }
    }

    private static void paint(Pen pen, Box box) {
        Web.Box at = box.at();
        pen.begin(
                "path-" + box.tag() + "-" + String.join("-", box.left()) + "-" + String.join("-", box.right()),
                box.device(),
                box.tag());
        pen.box(Ink.BLACK, Weight.HAIR, at.x, at.y, at.width, at.height);
        pen.text(
                Ink.BLACK,
                Face.BOLD,
                Type.SIZE,
                Anchor.START,
                at.x + 1.5,
                at.y + 3.6,
                Type.fitted(Face.BOLD, Type.SIZE, box.tag(), WIDTH - 3));
        double y = at.y + 3.6;
        for (String line : box.heading()) {
            y += Type.LEADING;
            pen.text(
                    Ink.BLACK,
                    Face.REGULAR,
                    Type.SIZE,
                    Anchor.START,
                    at.x + 1.5,
                    y,
                    Type.fitted(Face.REGULAR, Type.SIZE, line, WIDTH - 3));
        }
        for (int i = 0; i < box.left().size(); i++)
            terminal(
                    pen,
                    at.x,
                    at.y + y(box.heading(), i),
                    Anchor.START,
                    box.left().get(i));
        for (int i = 0; i < box.right().size(); i++)
            terminal(
                    pen,
                    at.x + at.width,
                    at.y + y(box.heading(), i),
                    Anchor.END,
                    box.right().get(i));
        for (int i = 0; i < Math.min(box.left().size(), box.right().size()); i++)
            box.picture()
                    .paint(pen, Ink.BLACK, at.x + TERMINAL, at.x + at.width - TERMINAL, at.y + y(box.heading(), i));
        pen.end();
    }

    private static void terminal(Pen pen, double x, double y, Anchor anchor, String name) {
        pen.ellipse(Ink.BLACK, Weight.NORMAL, x, y, TERMINAL, TERMINAL);
        pen.text(Ink.BLACK, Face.BOLD, Type.SIZE, anchor, x + (anchor == Anchor.START ? 1.8 : -1.8), y - 0.9, name);
    }
}
