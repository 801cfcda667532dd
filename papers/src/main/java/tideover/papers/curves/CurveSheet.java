package tideover.papers.curves;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.Assessment;
import tideover.engine.installation.Installation;
import tideover.engine.protection.Guarantee;
import tideover.engine.protection.TripCurve;
import tideover.engine.protection.selectivity.TimeCurrentPath;
import tideover.engine.rules.Finding;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.Fed;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.ThingId;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.drawing.DrawingStyle;
import tideover.papers.drawing.Ink;
import tideover.papers.drawing.PagePen;
import tideover.papers.drawing.PdfPen;
import tideover.papers.drawing.Pen;
import tideover.papers.drawing.Pen.Anchor;
import tideover.papers.drawing.Pen.Face;
import tideover.papers.drawing.SvgPen;
import tideover.papers.drawing.Type;
import tideover.papers.drawing.Weight;

/** The time–current sheet of one circuit, A4 upright. The same input gives the same bytes. */
public final class CurveSheet {

    /** Width of the sheet [mm]. */
    public static final double WIDTH_MM = 210;

    /** Height of the sheet [mm]. */
    public static final double HEIGHT_MM = 297;

    private static final double MARGIN = 7;
    private static final double LEFT = 15;

    /** Where the labels of devices begin, below the upper edge of the scale, and how far they lie apart [mm]. */
    private static final double FIRST_LABEL = 4;

    private static final double NEXT_LABEL = 11;

    /** The adiabatic equation holds for up to 5 s (IEC 60364-4-43, 434.5.2). */
    private static final double ADIABATIC_UP_TO_S = 5;

    private static final double WITHSTAND_LABEL_S = 2;

    private final TimeCurrentPath path;
    private final Installation installation;
    private final Optional<Double> longestS;
    private final Wording wording;
    private final Stamp stamp;

    private CurveSheet(
            TimeCurrentPath path, Installation installation, Optional<Double> longestS, Wording wording, Stamp stamp) {
        this.path = path;
        this.installation = installation;
        this.longestS = longestS;
        this.wording = wording.with(installation);
        this.stamp = stamp;
    }

    /** The sheet of a path; how long a fault to PE may last is taken from what the assessment judged by. */
    public static CurveSheet of(TimeCurrentPath path, Assessment assessment, Wording wording, Stamp stamp) {
        Optional<Double> longestS = assessment.findings().stream()
                .filter(finding -> finding.key().check().equals("fault.disconnection"))
                .filter(finding -> finding.key().place().equals(path.circuit()))
                .filter(finding -> finding.key().state() == OperatingState.CONNECTED)
                .map(Finding::measure)
                .filter(measure -> measure != null)
                .map(Finding.Measure::limit)
                .findFirst();
        return new CurveSheet(path, assessment.installation(), longestS, wording, stamp);
    }

    /** What is shown, in words: site, drawing and circuit. */
    public String title() {
        return wording.text(
                "diagram.full",
                wording.name(ThingId.PLACE),
                wording.text("curves.title"),
                wording.name(path.circuit()));
    }

    /** The sheet as an SVG file that needs no other file. */
    public String svg() {
        SvgPen pen = new SvgPen();
        paint(pen);
        return pen.finished(
                WIDTH_MM, HEIGHT_MM, wording.locale().toLanguageTag(), title(), wording.text("curves.describe"));
    }

    /** The sheet for a page: the bare SVG element, which looks as {@link DrawingStyle#css} says. */
    public String pageSvg() {
        PagePen pen = new PagePen();
        paint(pen);
        return pen.element(WIDTH_MM, HEIGHT_MM, wording.locale().toLanguageTag(), title());
    }

    /** Paints the sheet over what is on a page of a PDF document, its left edge this far from that of the page [mm]. */
    public void paintOn(PDDocument document, PDPage page, double rightMm) {
        try (PdfPen pen = new PdfPen(document, page, rightMm)) {
            paint(pen);
        }
    }

    private void paint(Pen pen) {
        head(pen);
        Ruling ruling = new Ruling(pen, wording);
        Column column = new Column(WIDTH_MM - MARGIN);
        bands(pen, column);
        ruling.paint();
        outlines(pen);
        currents(ruling);
        island(pen, column);
        withstand(pen, column);
        longest(pen, column);
        beside(column);
        column.paint(pen);
        notes(pen);
    }

    private void head(Pen pen) {
        double right = WIDTH_MM - MARGIN;
        String circuit = wording.name(path.circuit());
        pen.text(Ink.BLACK, Face.BOLD, 4.6, Anchor.START, LEFT, 14, Type.fitted(Face.BOLD, 4.6, circuit, 128));
        pen.text(Ink.BLACK, Face.REGULAR, 3.4, Anchor.START, LEFT, 19.4, wording.text("curves.title"));
        String place = wording.name(ThingId.PLACE);
        pen.text(
                Ink.BLACK,
                Face.REGULAR,
                Type.SIZE,
                Anchor.END,
                right,
                10,
                Type.fitted(Face.REGULAR, Type.SIZE, place, 56));
        String revision = wording.text("diagram.revision", stamp.revision().shortened());
        pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Anchor.END, right, 14.6, revision);
        String date = wording.text("diagram.date", stamp.date().toString());
        pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Anchor.END, right, 19.2, date);
        pen.line(Ink.BLACK, Weight.NORMAL, LEFT, 22.4, right, 22.4);
    }

    /** The filled bands lie under the ruling, so that values can be read through them. */
    private void bands(Pen pen, Column column) {
        double y = Scales.TOP + FIRST_LABEL;
        for (TimeCurrentPath.Device device : path.devices()) {
            ThingId holder = device.place().holder();
            TripCurve curve = device.curve();
            Ink ink = ink(holder);
            String head = wording.text("curves.device", device(device.place().device()), wording.name(holder));
            if (curve == null) {
                column.add(Ink.PENCIL, Scales.RIGHT, y, head, wording.text("curves.unknown"));
            } else {
                pen.wash(ink, band(curve).area());
                column.add(ink, Scales.x(curve.currentForDisconnectionA(Scales.timeS(y))), y, head, "");
            }
            y += NEXT_LABEL;
        }
    }

    private Band band(TripCurve curve) {
        Double largestA = path.largestA();
        return new Band(curve, largestA == null || !Scales.shows(largestA) ? Scales.LARGEST_A : largestA);
    }

    private void outlines(Pen pen) {
        for (TimeCurrentPath.Device device : path.devices()) {
            TripCurve curve = device.curve();
            if (curve == null) continue;
            Ink ink = ink(device.place().holder());
            pen.begin(
                    "band-" + device.place().holder(),
                    device.place().holder(),
                    wording.name(device.place().holder()));
            pen.line(ink, Weight.HAIR, band(curve).earliest());
            pen.line(ink, Weight.STRONG, band(curve).latest());
            pen.end();
        }
    }

    private void currents(Ruling ruling) {
        OvercurrentDevice own =
                path.devices().get(path.devices().size() - 1).place().device();
        current(ruling, Ink.BLACK, Weight.DASHED, own.ratedCurrentA(), "curves.rated");
        current(ruling, Ink.GRID, Weight.NORMAL, path.smallestA(), "curves.smallest");
        current(ruling, Ink.GRID, Weight.NORMAL, path.largestA(), "curves.largest");
    }

    private void current(Ruling ruling, Ink ink, Weight weight, @Nullable Double currentA, String key) {
        if (currentA != null && Scales.shows(currentA))
            ruling.current(ink, weight, currentA, Scales.SHORTEST_S, wording.text(key, amount(currentA)));
    }

    /** What the island source gives, for as long as it gives it: a bar from the shortest time up. */
    private void island(Pen pen, Column column) {
        ThingId source = path.source();
        Double currentA = path.sourceA();
        Double stopsS = path.sourceStopsS();
        if (source == null || currentA == null || stopsS == null) return;
        double x = Scales.x(currentA);
        double y = Scales.y(stopsS);
        pen.line(Ink.ISLAND, Weight.BUS, x, Scales.BOTTOM, x, y);
        column.add(
                Ink.ISLAND,
                x,
                y,
                wording.text("curves.island", PhraseArg.name(source), amount(currentA), time(stopsS)),
                wording.text(opensBefore(currentA, stopsS) ? "curves.island.opens" : "curves.island.stops"));
    }

    private boolean opensBefore(double currentA, double timeS) {
        for (TimeCurrentPath.Device device : path.devices())
            if (installation
                            .findFed(device.place().holder())
                            .filter(this::isBehindSwitch)
                            .isPresent()
                    && device.curve() != null
                    && device.curve().latestS(currentA) <= timeS) return true;
        return false;
    }

    private void withstand(Pen pen, Column column) {
        Double energyA2s = path.withstandA2s();
        if (energyA2s == null) return;
        double fromA = Math.sqrt(energyA2s / ADIABATIC_UP_TO_S);
        double toA = Math.min(Scales.LARGEST_A, Math.sqrt(energyA2s / Scales.SHORTEST_S));
        if (!Scales.shows(fromA) || fromA >= toA) return;
        pen.begin("withstand", wording.text("curves.withstand", PhraseArg.name(path.circuit())));
        pen.line(
                Ink.STOP,
                Weight.STRONG,
                Scales.x(fromA),
                Scales.y(ADIABATIC_UP_TO_S),
                Scales.x(toA),
                Scales.y(energyA2s / toA / toA));
        pen.end();
        double labelS = Math.max(WITHSTAND_LABEL_S, Scales.SHORTEST_S);
        column.add(
                Ink.STOP,
                Scales.x(Math.sqrt(energyA2s / labelS)),
                Scales.y(labelS),
                wording.text("curves.withstand", PhraseArg.name(path.circuit())),
                wording.text("curves.withstand.how", PhraseArg.amount(energyA2s, Unit.A2S)));
    }

    private void longest(Pen pen, Column column) {
        longestS.ifPresent(timeS -> {
            double y = Scales.y(timeS);
            pen.line(Ink.BLACK, Weight.DASHED, Scales.LEFT, y, Scales.RIGHT, y);
            column.add(Ink.BLACK, Scales.RIGHT, y, wording.text("curves.longest", time(timeS)), "");
        });
    }

    /** Residual currents are too small for the scale. */
    private void beside(Column column) {
        double y = Scales.TOP + FIRST_LABEL + NEXT_LABEL * path.devices().size();
        for (TimeCurrentPath.Residual rcd : path.rcds())
            column.note(
                    y++,
                    rcd.ratedA() == null
                            ? wording.text("curves.rcd.unknown", PhraseArg.name(rcd.holder()))
                            : wording.text(
                                    "curves.rcd",
                                    PhraseArg.name(rcd.holder()),
                                    PhraseArg.amount(rcd.ratedA(), Unit.RESIDUAL_A),
                                    time(rcd.latestS()),
                                    time(rcd.quickLatestS())));
    }

    private void notes(Pen pen) {
        Map<String, Set<String>> verified = new TreeMap<>();
        for (TimeCurrentPath.Device device : path.devices())
            if (device.curve() != null)
                for (Guarantee guarantee : Guarantee.values())
                    for (TripCurve.Point point : device.curve().points(guarantee))
                        verified.computeIfAbsent(point.source().document(), document -> new TreeSet<>())
                                .add(wording.word(point.source().verification()));
        List<String> sources = new ArrayList<>();
        verified.forEach((document, how) ->
                sources.add(wording.text("curves.source", document, wording.joined(List.copyOf(how)))));
        double y = Scales.BOTTOM + 14;
        for (String paragraph :
                List.of(wording.text("curves.how"), wording.text("curves.sources", wording.joined(sources))))
            for (String line : Type.wrapped(Face.REGULAR, Type.SIZE, paragraph, WIDTH_MM - MARGIN - LEFT)) {
                pen.text(Ink.BLACK, Face.REGULAR, Type.SIZE, Anchor.START, LEFT, y, line);
                y += Type.LEADING;
            }
    }

    /** Devices behind an islanding switch in the ink of what stays on, others in that of the grid. */
    private Ink ink(ThingId holder) {
        return installation.findFed(holder).filter(this::isBehindSwitch).isPresent() ? Ink.ISLAND : Ink.GRID;
    }

    private boolean isBehindSwitch(Fed fed) {
        for (IslandingSwitch device : installation.islandingSwitches())
            if (installation.isBehind(fed, device.id())) return true;
        return false;
    }

    /** Such as B16 for a circuit-breaker or "fuse 35 A". */
    private String device(OvercurrentDevice device) {
        Double ratedA = device.ratedCurrentA();
        if (device.kind() == OvercurrentKind.FUSE)
            return wording.text("diagram.fuse", ratedA == null ? "?" : wording.amount(ratedA, Unit.A));
        return (device.curve() == null ? "?" : wording.word(device.curve()))
                + (ratedA == null ? "?" : wording.amount(ratedA, Unit.RATIO));
    }

    private static PhraseArg amount(double currentA) {
        return PhraseArg.amount(currentA, Unit.A);
    }

    private static PhraseArg time(double timeS) {
        return PhraseArg.amount(timeS, Unit.S);
    }
}
