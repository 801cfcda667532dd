package tideover.papers.terminals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Unit;
import tideover.engine.site.ByPass;
import tideover.engine.site.Fed;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.schedule.ControlSchedule;
import tideover.engine.wiring.schedule.CoreRow;
import tideover.engine.wiring.schedule.Laying;
import tideover.engine.wiring.schedule.PowerRow;
import tideover.engine.wiring.schedule.PowerSchedule;
import tideover.papers.Wording;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/**
 * The whole cabinet on one sheet: its devices, and each cable or bundle between two of them as one line with its
 * conductors. Grid side below the double line, island side above it, as in the one-line diagram.
 */
final class Connections {

    private static final double TEXT = 40;
    private static final double HEAD = 4;
    private static final double MOST_PLACES_APART = 6;
    private static final int SWITCH = 1;

    private final Wording wording;
    private final Installation installation;
    private final Map<ThingId, Web.Box> boxes = new LinkedHashMap<>();
    private final Map<ThingId, Device> devices = new HashMap<>();
    private final Map<Web.Line, Weight> weights = new HashMap<>();
    private final Web web = new Web(Web.Growth.UP);
    private final Paper paper;

    /** What runs between two devices in one cable or bundle. */
    private record Bundle(String run, ThingId from, ThingId to) {}

    Connections(
            Installation installation,
            List<Device> shown,
            PowerSchedule power,
            ControlSchedule control,
            Wording wording) {
        this.installation = installation;
        this.wording = wording;
        for (Device device : shown) devices.put(device.id(), device);
        Map<Bundle, List<PowerRow>> runs = new LinkedHashMap<>();
        for (PowerRow row : power.rows())
            if (isBetween(row.from().thing(), row.to().thing()))
                runs.computeIfAbsent(
                                bundle(row.run(), row.from().thing(), row.to().thing()), b -> new ArrayList<>())
                        .add(row);
        Map<Bundle, List<CoreRow>> cables = new LinkedHashMap<>();
        for (CoreRow row : control.rows())
            if (row.from() != null
                    && row.to() != null
                    && isBetween(row.from().device(), row.to().device()))
                cables.computeIfAbsent(
                                bundle(row.run(), row.from().device(), row.to().device()), b -> new ArrayList<>())
                        .add(row);
        Map<ThingId, Integer> ends = new HashMap<>();
        List<Bundle> all = new ArrayList<>(runs.keySet());
        all.addAll(cables.keySet());
        for (Bundle bundle : all) {
            ends.merge(bundle.from(), 1, Integer::sum);
            ends.merge(bundle.to(), 1, Integer::sum);
        }
        for (Device device : shown)
            if (ends.containsKey(device.id())) boxes.put(device.id(), box(device, ends.getOrDefault(device.id(), 0)));
        runs.forEach((bundle, rows) -> line(bundle, words(bundle.run(), rows), Weight.STRONG));
        cables.forEach((bundle, rows) -> line(bundle, cores(bundle.run(), rows), Weight.NORMAL));
        paper = web.layOut();
    }

    boolean isEmpty() {
        return boxes.isEmpty();
    }

    Paper paper() {
        return paper;
    }

    private boolean isBetween(ThingId one, ThingId other) {
        return !one.equals(other) && devices.containsKey(one) && devices.containsKey(other);
    }

    /** Everything on the sheet runs away from the grid, whichever end is called the first. */
    private Bundle bundle(String run, ThingId one, ThingId other) {
        int order = rank(one) - rank(other);
        if (order == 0) order = depth(one) - depth(other);
        return order > 0 ? new Bundle(run, other, one) : new Bundle(run, one, other);
    }

    /** How many things lie before it on its way from the grid; what is not in the path of power comes last. */
    private int depth(ThingId id) {
        Thing thing = installation.find(id).orElse(null);
        if (thing instanceof ByPass byPass && byPass.fedFrom() != null) return depth(byPass.fedFrom()) + 1;
        return thing instanceof Fed ? installation.wayFromSupply(id).size() : Integer.MAX_VALUE / 2;
    }

    private int rank(ThingId id) {
        Thing thing = installation.find(id).orElse(null);
        if (thing instanceof IslandingSwitch || thing instanceof ByPass) return SWITCH;
        boolean grid = id.equals(ThingId.SUPPLY)
                || thing instanceof Fed fed
                        && installation.islandingSwitches().stream()
                                .noneMatch(device -> installation.isBehind(fed, device.id()));
        return !grid ? SWITCH + 1 : SWITCH - 1;
    }

    private Web.Box box(Device device, int ends) {
        double width = Math.max(MOST_PLACES_APART * (ends + 1) / 2, 20);
        for (String line : name(device)) width = Math.max(width, Type.width(Face.BOLD, Type.SIZE, line) + 6);
        return web.box(width, HEAD + name(device).size() * Type.LEADING, rank(device.id()));
    }

    private static List<String> name(Device device) {
        return Type.wrapped(Face.BOLD, Type.SIZE, device.name(), TEXT);
    }

    private void line(Bundle bundle, List<String> words, Weight weight) {
        double width = 0;
        for (String word : words) width = Math.max(width, Type.width(Face.REGULAR, Type.SIZE, word));
        Web.Box from = boxes.get(bundle.from());
        Web.Box to = boxes.get(bundle.to());
        if (from == null || to == null) return;
        Web.Line line = new Web.Line(
                new Web.Place(from, Web.Edge.UPPER, -1), new Web.Place(to, Web.Edge.LOWER, -1), words, width + 1);
        web.lines.add(line);
        weights.put(line, weight);
    }

    private List<String> words(String run, List<PowerRow> rows) {
        String conductors = rows.stream()
                .map(row -> wording.word(row.conductor()))
                .distinct()
                .collect(Collectors.joining(" "));
        Double section = rows.get(0).crossSectionMm2();
        List<String> words = new ArrayList<>();
        words.add(run + "  " + conductors);
        if (rows.get(0).laying() == Laying.DIRECT) words.add(wording.text("terminals.direct"));
        else words.add(rows.size() + "×" + (section == null ? "?" : wording.amount(section, Unit.MM2)));
        return words;
    }

    private List<String> cores(String run, List<CoreRow> rows) {
        List<String> words = new ArrayList<>();
        words.add(run);
        List<String> positions =
                rows.stream().map(row -> String.valueOf(row.position())).toList();
        words.add(wording.text(rows.size() == 1 ? "terminals.core" : "terminals.cores", ranges(rows, positions)));
        return words;
    }

    /** 1–3, 5 */
    private static String ranges(List<CoreRow> rows, List<String> positions) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < rows.size(); i++) {
            int last = i;
            while (last + 1 < rows.size()
                    && rows.get(last + 1).position() == rows.get(last).position() + 1) last++;
            if (text.length() > 0) text.append(", ");
            text.append(positions.get(i));
            if (last > i) text.append(last > i + 1 ? "–" : ", ").append(positions.get(last));
            i = last;
        }
        return text.toString();
    }

    void paint(Pen pen) {
        boxes.forEach((id, box) -> {
            Device device = devices.get(id);
            if (device == null) return;
            pen.begin("whole-" + id, id, device.name());
            pen.box(Ink.BLACK, Weight.NORMAL, box.x, box.y, box.width, box.height);
            double y = box.y + 4.5;
            for (String line : name(device)) {
                pen.text(Ink.BLACK, Face.BOLD, Type.SIZE, Anchor.MIDDLE, box.x + box.width / 2, y, line);
                y += Type.LEADING;
            }
            pen.end();
        });
        for (Web.Line line : web.lines) {
            pen.line(Ink.BLACK, weights.getOrDefault(line, Weight.NORMAL), line.way);
            double y = line.wordsY + 2.9;
            for (String word : line.words) {
                pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Anchor.START, line.wordsX + 0.5, y, word);
                y += Type.LEADING;
            }
        }
        doubleLine(pen);
    }

    /** Through the middle of the switches, broken where they stand. */
    private void doubleLine(Pen pen) {
        List<Web.Box> switches = new ArrayList<>();
        for (IslandingSwitch device : installation.islandingSwitches()) {
            Web.Box box = boxes.get(device.id());
            if (box != null) switches.add(box);
        }
        if (switches.isEmpty()) return;
        switches.sort(Comparator.comparingDouble(box -> box.x));
        double y = switches.get(0).y + switches.get(0).height / 2;
        double x = Paper.LEFT + 2;
        for (double[] gap : gaps(y)) {
            twice(pen, x, gap[0], y);
            x = Math.max(x, gap[1]);
        }
        twice(pen, x, paper.right() - 2, y);
        pen.fill(Ink.ISLAND, Paper.LEFT + 3, y - 5, 8, 2.6);
        side(pen, y - 2.6, "right");
        pen.hatch(Ink.GRID, Paper.LEFT + 3, y + 2.4, 8, 2.6, 1.2);
        side(pen, y + 4.8, "left");
    }

    /** Where boxes and words stand on it, from left to right. */
    private List<double[]> gaps(double y) {
        List<double[]> gaps = new ArrayList<>();
        for (Web.Box box : web.boxes)
            if (box.y < y + 1 && box.y + box.height > y - 1) gaps.add(new double[] {box.x, box.x + box.width});
        for (Web.Line line : web.lines)
            if (line.wordsY < y + 2 && line.wordsY + line.words.size() * Type.LEADING > y - 2)
                gaps.add(new double[] {line.wordsX - 0.6, line.wordsX + line.wordsWidth + 0.4});
        gaps.sort(Comparator.comparingDouble(gap -> gap[0]));
        return gaps;
    }

    private void side(Pen pen, double y, String which) {
        String key = "terminals.sides.GRID_AND_ISLAND.";
        pen.text(Ink.BLACK, Face.BOLD, Type.SIZE, Anchor.START, Paper.LEFT + 13, y, wording.text(key + which));
    }

    private static void twice(Pen pen, double from, double to, double y) {
        if (to <= from) return;
        pen.line(Ink.BLACK, Weight.NORMAL, from, y - 0.6, to, y - 0.6);
        pen.line(Ink.BLACK, Weight.NORMAL, from, y + 0.6, to, y + 0.6);
    }
}
