package tideover.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.assessment.Assessment;
import tideover.engine.protection.selectivity.TimeCurrentPath;
import tideover.engine.protection.selectivity.TimeCurrentPaths;
import tideover.engine.rules.Digest;
import tideover.engine.site.Circuit;
import tideover.engine.site.Site;
import tideover.files.FieldTable;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.curves.CurveSheet;
import tideover.papers.handover.Handover;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;
import tideover.reference.papers.DrawnSheet.Area;
import tideover.reference.papers.DrawnSheet.Line;
import tideover.reference.papers.DrawnSheet.Point;
import tideover.reference.papers.DrawnSheet.Text;

/** The time–current sheet as one reads values from it with a ruler. */
class CurveSheetTest {

    private static final Wording WORDING = Wording.of(Locale.ENGLISH, FieldTable.load());
    private static final Stamp STAMP = new Stamp(Digest.of("revision"), LocalDate.of(2026, 11, 25));

    /** Lengths are written to 0.01 mm; half of that twice, once for the point and once for the scale. */
    private static final float RULER_MM = 0.011f;

    /**
     * Corners of the bands of a B16, C10, 35 A and 63 A fuse. IEC 60898-1, Table 7 in multiples of rated current; IEC 60269-1,
     * Tables 2 and 3; at 0.4 s a published loop-tester handbook.
     */
    @ParameterizedTest(name = "{1} {2}: {3} A, {4} s")
    @CsvSource({
        "kitchen-sockets, kitchen-sockets, holds, 18.08, 3600, test a: 1.13 times 16 A",
        "kitchen-sockets, kitchen-sockets, holds, 40.8, 1, test c: 2.55 times",
        "kitchen-sockets, kitchen-sockets, holds, 48, 0.1, test d: 3 times",
        "kitchen-sockets, kitchen-sockets, opens, 23.2, 3600, test b: 1.45 times",
        "kitchen-sockets, kitchen-sockets, opens, 40.8, 60, test c: 2.55 times",
        "kitchen-sockets, kitchen-sockets, opens, 80, 0.1, test e: 5 times",
        "heat-pump, heat-pump, holds, 80, 0.1, C16 test d: 5 times",
        "heat-pump, heat-pump, opens, 160, 0.1, C16 test e: 10 times",
        "kitchen-sockets, supply, holds, 78.75, 3600, Table 2: 1.25 times 63 A",
        "kitchen-sockets, supply, opens, 100.8, 3600, Table 2: 1.6 times 63 A",
        "kitchen-sockets, supply, holds, 160, 10, Table 3: least current at 10 s",
        "kitchen-sockets, supply, opens, 320, 5, Table 3: largest current at 5 s",
        "kitchen-sockets, supply, opens, 550, 0.4, handbook",
        "kitchen-sockets, supply, holds, 450, 0.1, Table 3: least current at 0.1 s",
        "kitchen-sockets, supply, opens, 820, 0.1, Table 3: largest current at 0.1 s",
        "bath-sockets, upper-board, opens, 85, 5, Table 3: 20 A",
        "bath-sockets, upper-board, holds, 42, 10, Table 3: 20 A"
    })
    void publishedPointsLieWhereTheScalesSay(
            String circuit, String device, String guarantee, double currentA, double timeS, String source)
            throws Exception {
        DrawnSheet sheet = sheet(Houses.read(Houses.TOWN_HOUSE), circuit);
        Point wanted = place(sheet, currentA, timeS);
        assertThat(sheet.corners("band-" + device)).as(source).anySatisfy(corner -> {
            assertThat(corner.x()).isCloseTo(wanted.x(), within(RULER_MM));
            assertThat(corner.y()).isCloseTo(wanted.y(), within(RULER_MM));
        });
    }

    /** IEC 60364-4-43, 434.5.2: k of copper in PVC 115, so (115 · 2.5)² = 82 656 A²s, 128.6 A for 5 s, 2875 A for 0.01 s. */
    @Test
    void theLineOfTheCableIsWhatItBearsAdiabatically() throws Exception {
        DrawnSheet sheet = sheet(Houses.read(Houses.TOWN_HOUSE), "kitchen-sockets");
        List<Point> ends = sheet.corners("withstand");
        assertThat(ends).hasSize(2);
        // Half of the last digit of 128.6 A on a decade of 33.5 mm is 0.006 mm.
        assertThat(ends.get(0).x()).isCloseTo(place(sheet, 128.6, 5).x(), within(RULER_MM + 0.006f));
        assertThat(ends.get(0).y()).isCloseTo(place(sheet, 128.6, 5).y(), within(RULER_MM));
        assertThat(ends.get(1).x()).isCloseTo(place(sheet, 2875, 0.01).x(), within(RULER_MM));
        assertThat(ends.get(1).y()).isCloseTo(place(sheet, 2875, 0.01).y(), within(RULER_MM));
    }

    /** In the island the inverter of the town house gives 24 A and has stopped after 0.15 s: a bar that reaches no curve. */
    @Test
    void theIslandSourceIsABarAsHighAsTheTimeItLasts() throws Exception {
        DrawnSheet sheet = sheet(Houses.read(Houses.TOWN_HOUSE), "kitchen-sockets");
        Point top = place(sheet, 24, 0.15);
        assertThat(sheet.lines()).anySatisfy(line -> {
            assertThat(line.x1()).isEqualTo(line.x2()).isCloseTo(top.x(), within(RULER_MM));
            assertThat(Math.min(line.y1(), line.y2())).isCloseTo(top.y(), within(RULER_MM));
        });
        assertThat(words(sheet)).contains("24 A").contains("0.15 s").contains("all it feeds goes dark");
    }

    @Test
    void aGridOnlyCircuitHasNoIslandSource() throws Exception {
        assertThat(words(sheet(Houses.read(Houses.TOWN_HOUSE), "sauna"))).doesNotContain("Islanded");
    }

    @Test
    void aDeviceOfWhichTooLittleIsKnownIsNamedAndNotDrawn() throws Exception {
        Site site = Houses.with(Houses.TOWN_HOUSE, List.of("kitchen-sockets.protection.curve: null"));
        DrawnSheet sheet = sheet(site, "kitchen-sockets");
        assertThat(sheet.corners("band-kitchen-sockets")).isEmpty();
        assertThat(words(sheet)).contains("?16 · Kitchen sockets").contains("is not known");
    }

    /** Every circuit of every house, half surveyed ones too. */
    static Stream<Site> manySites() {
        return Stream.concat(Houses.all().stream().map(Houses::read), GeneratedSites.sites(20));
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void textsStandInsideTheSheetAndApart(Site site) throws Exception {
        Assessment assessment = Houses.assess(site);
        TimeCurrentPaths paths = Houses.curves(assessment);
        // Margins of 7 mm; what ends at one may do so by a rounded hundredth.
        Area frame = new Area(7, 5, 203.02f, 290);
        for (Circuit circuit : assessment.installation().circuits()) {
            TimeCurrentPath path = paths.find(circuit).orElse(null);
            if (path == null) continue;
            DrawnSheet sheet = new DrawnSheet(
                    CurveSheet.of(path, assessment, WORDING, STAMP).svg());
            List<Text> texts = sheet.texts();
            List<String> troubles = new ArrayList<>();
            for (int i = 0; i < texts.size(); i++) {
                if (!texts.get(i).area().isInside(frame))
                    troubles.add(texts.get(i).words() + " outside");
                for (int j = i + 1; j < texts.size(); j++)
                    if (texts.get(i).area().overlaps(texts.get(j).area()))
                        troubles.add(
                                texts.get(i).words() + " on " + texts.get(j).words());
            }
            assertThat(troubles).as(circuit.id().text()).isEmpty();
            assertThat(words(sheet)).doesNotContain("NaN").doesNotContain("curves.");
        }
    }

    static Stream<Path> houses() {
        return Stream.of(Houses.TOWN_HOUSE, Houses.FARMHOUSE, Houses.TERRACE);
    }

    @ParameterizedTest
    @MethodSource("houses")
    void theHandoverFileHasASheetForEachKindOfPathTwoOnAPage(Path house) {
        Assessment assessment = Houses.explain(Houses.read(house));
        List<TimeCurrentPath> paths = Houses.curves(assessment).ofStayingCircuits(6);
        assertThat(paths).hasSizeBetween(1, 6);
        PrintedPaper paper = new PrintedPaper(
                Handover.of(assessment, WORDING, STAMP).with(paths).pdf());
        List<String> sheets = paper.pages().stream()
                .filter(PrintedPaper.Page::isSheet)
                .map(PrintedPaper.Page::text)
                .toList();
        assertThat(sheets).hasSize(2 + (paths.size() + 1) / 2);
        Wording names = WORDING.with(assessment.installation());
        for (int i = 0; i < paths.size(); i++)
            assertThat(sheets.get(2 + i / 2)).contains(names.name(paths.get(i).circuit()));
        assertThat(paper.bookmarks()).extracting(PrintedPaper.Bookmark::name).contains("Time–current curves");
        assertThat(paper.looseFonts()).isEmpty();
        for (PrintedPaper.Page page : paper.pages()) assertThat(page.beyond()).isEmpty();
    }

    /** Slowest first: of the kinds of path none comes before one whose own device may take longer. */
    @Test
    void theSheetOfTheSlowestPathComesFirst() {
        List<TimeCurrentPath> paths =
                Houses.curves(Houses.assess(Houses.read(Houses.FARMHOUSE))).ofStayingCircuits(6);
        List<Double> latestS = new ArrayList<>();
        for (TimeCurrentPath path : paths) {
            TimeCurrentPath.Device own = path.devices().get(path.devices().size() - 1);
            latestS.add(own.curve().latestS(path.smallestA()));
        }
        assertThat(latestS).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    private static DrawnSheet sheet(Site site, String circuit) throws Exception {
        Assessment assessment = Houses.assess(site);
        Circuit of = assessment.installation().circuits().stream()
                .filter(c -> c.id().text().equals(circuit))
                .findFirst()
                .orElseThrow();
        TimeCurrentPath path = Houses.curves(assessment).find(of).orElseThrow();
        return new DrawnSheet(CurveSheet.of(path, assessment, WORDING, STAMP).svg());
    }

    private static String words(DrawnSheet sheet) {
        return String.join(" ", sheet.texts().stream().map(Text::words).toList());
    }

    /** By the labels of the scales themselves: 10 A and 10 kA lie three decades apart, the frame is six decades high. */
    private static Point place(DrawnSheet sheet, double currentA, double timeS) {
        float tenA = middle(sheet, "10 A");
        float decade = (middle(sheet, "10 kA") - tenA) / 3;
        Line left = sheet.lines().stream()
                .filter(line -> line.x1() == line.x2() && Math.abs(line.y1() - line.y2()) > 5.9f * decade)
                .filter(line -> Math.abs(line.x1() - tenA) < 0.02f)
                .findFirst()
                .orElseThrow();
        float bottom = Math.max(left.y1(), left.y2());
        return new Point((float) (tenA + decade * Math.log10(currentA / 10)), (float)
                (bottom - decade * Math.log10(timeS / 0.01)));
    }

    private static float middle(DrawnSheet sheet, String label) {
        Area area = sheet.texts().stream()
                .filter(text -> text.words().equals(label))
                .findFirst()
                .orElseThrow()
                .area();
        return (area.left() + area.right()) / 2;
    }
}
