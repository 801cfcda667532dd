package tideover.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.installation.Installation;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.rules.Digest;
import tideover.engine.site.Site;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.schedule.ControlEnd;
import tideover.engine.wiring.schedule.ControlSchedule;
import tideover.engine.wiring.schedule.CoreRow;
import tideover.engine.wiring.schedule.PowerEnd;
import tideover.engine.wiring.schedule.PowerRow;
import tideover.engine.wiring.schedule.PowerSchedule;
import tideover.engine.wiring.schedule.WiringTables;
import tideover.files.FieldTable;
import tideover.files.tables.TableFiles;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.terminals.TerminalDrawing;
import tideover.papers.terminals.TerminalSheet;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;
import tideover.reference.papers.DrawnSheet.Area;
import tideover.reference.papers.DrawnSheet.Line;
import tideover.reference.papers.DrawnSheet.Text;

/** The terminal drawing as a fitter needs it who stands before the open cabinet. */
class TerminalDrawingTest {

    private static final Wording WORDING = Wording.of(Locale.ENGLISH, FieldTable.load());
    private static final Stamp STAMP = new Stamp(Digest.of("revision"), LocalDate.of(2026, 11, 25));
    private static final WiringTables TABLES = TableFiles.wiring();

    private static final Map<Site, Drawn> DRAWN = new ConcurrentHashMap<>();

    /** A drawing beside the schedules it was made from. */
    private record Drawn(
            ControlNet net,
            PowerSchedule power,
            ControlSchedule control,
            TerminalDrawing drawing,
            Map<TerminalSheet, DrawnSheet> sheets) {

        private static Drawn of(Site site) {
            Installation installation = Installation.of(site);
            ControlNet net = ControlNet.of(installation);
            PowerSchedule power = PowerSchedule.of(installation, TABLES);
            ControlSchedule control = ControlSchedule.of(installation, net, TABLES);
            TerminalDrawing drawing = TerminalDrawing.of(installation, net, power, control, WORDING, STAMP);
            Map<TerminalSheet, DrawnSheet> sheets = new HashMap<>();
            for (TerminalSheet sheet : drawing.sheets()) {
                try {
                    sheets.put(sheet, new DrawnSheet(sheet.svg()));
                } catch (Exception e) {
                    throw new IllegalStateException(sheet.title(), e);
                }
            }
            return new Drawn(net, power, control, drawing, sheets);
        }

        private List<Text> texts(String beginning) {
            List<Text> texts = new ArrayList<>();
            sheets.forEach((sheet, drawn) -> {
                if (sheet.name().startsWith(beginning)) texts.addAll(drawn.texts());
            });
            return texts;
        }

        /** How often these words stand on the cards. */
        private long onCards(String words) {
            return texts("card").stream()
                    .filter(text -> text.words().equals(words))
                    .count();
        }
    }

    static Stream<Site> manySites() {
        Stream<Path> houses =
                Houses.all().stream().filter(path -> !path.toString().contains("troubled"));
        return Stream.concat(houses.map(Houses::read), GeneratedSites.sites(20));
    }

    private static Drawn drawn(Site site) {
        return DRAWN.computeIfAbsent(site, Drawn::of);
    }

    private static Drawn townHouse() {
        return drawn(Houses.read(Houses.TOWN_HOUSE));
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void noTextLiesOnAnother(Site site) {
        List<String> overlaps = new ArrayList<>();
        drawn(site).sheets().forEach((sheet, drawn) -> {
            List<Text> texts = drawn.texts();
            for (int i = 0; i < texts.size(); i++)
                for (int j = i + 1; j < texts.size(); j++)
                    if (texts.get(i).area().overlaps(texts.get(j).area()))
                        overlaps.add("%s: %s on %s"
                                .formatted(
                                        sheet.name(),
                                        texts.get(i).words(),
                                        texts.get(j).words()));
        });
        assertThat(overlaps).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void noConductorRunsThroughAText(Site site) {
        List<String> crossed = new ArrayList<>();
        drawn(site).sheets().forEach((sheet, drawn) -> {
            for (Text text : drawn.texts()) {
                if (text.words().equals("Wh")) continue;
                // A text may stand close to its conductor: half a millimetre is left out all around.
                Area core = new Area(
                        text.area().left() + 0.5f,
                        text.area().top() + 0.5f,
                        text.area().right() - 0.5f,
                        text.area().bottom() - 0.5f);
                for (Line line : drawn.lines())
                    if ((line.x1() == line.x2() || line.y1() == line.y2()) && core.isCrossedBy(line))
                        crossed.add("%s: %s by %s".formatted(sheet.name(), text.words(), line));
            }
        });
        assertThat(crossed).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void everyTextStandsInsideTheFrameWithCapitalsOfTwoMillimetres(Site site) {
        drawn(site).sheets().forEach((sheet, drawn) -> {
            // Frame: 15 mm left for the binding, 7 mm on the other sides. Capitals are 0.668 of the size of the type.
            Area frame = new Area(15, 7, drawn.width() - 7, drawn.height() - 7);
            assertThat(drawn.texts())
                    .as(sheet.name())
                    .allMatch(text -> text.area().isInside(frame))
                    .allMatch(text -> text.size() >= 3);
        });
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void everyConductorStandsOnceAtEachOfItsTerminals(Site site) {
        Drawn drawn = drawn(site);
        List<ThingId> cards = drawn.drawing().devices();
        Map<String, Long> expected = new HashMap<>();
        for (PowerRow row : drawn.power().rows())
            for (PowerEnd end : List.of(row.from(), row.to()))
                if (cards.contains(end.thing())) expected.merge(row.designation(), 1L, Long::sum);
        for (CoreRow row : drawn.control().rows()) {
            if (isOnCard(row.from(), cards)) expected.merge(row.designation(), 1L, Long::sum);
            if (isOnCard(row.to(), cards)) expected.merge(row.designation(), 1L, Long::sum);
        }
        expected.forEach(
                (mark, count) -> assertThat(drawn.onCards(mark)).as(mark).isEqualTo(count));
    }

    private static boolean isOnCard(@Nullable ControlEnd end, List<ThingId> cards) {
        return end != null && cards.contains(end.device());
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void everyControlTerminalIsDrawnUnderTheMakersName(Site site) {
        Drawn drawn = drawn(site);
        Map<String, Long> expected = new HashMap<>();
        for (TerminalId terminal : drawn.net().terminals()) expected.merge(terminal.name(), 1L, Long::sum);
        expected.forEach(
                (name, count) -> assertThat(drawn.onCards(name)).as(name).isGreaterThanOrEqualTo(count));
    }

    @Test
    void everyCoreBetweenTwoTerminalsIsOneLineOfTheCurrentPaths() {
        Drawn drawn = townHouse();
        List<String> words = drawn.texts("paths").stream().map(Text::words).toList();
        for (CoreRow row : drawn.control().rows())
            if (row.from() != null && row.to() != null)
                assertThat(words.stream().filter(row.designation()::equals)).hasSize(1);
    }

    @Test
    void colourIsWrittenInWordsAndSectionBesideIt() {
        // Lines brown, black, grey and neutral blue in Germany: HD 308 S2.
        List<String> words = townHouse().texts("card").stream().map(Text::words).toList();
        assertThat(words).contains("brown BN 10 mm²", "black BK 10 mm²", "grey GY 10 mm²", "blue BU 10 mm²");
    }

    @Test
    void aTerminalTellsWhereTheOtherEndIs() {
        // The request to close the switch passes the interlock of the neutral–earth switch before the coil.
        List<String> words = townHouse().texts("card").stream().map(Text::words).toList();
        assertThat(words).contains("to TB1:X4:4", "to QC1:31", "to QC1:32", "to QA1:A1");
    }

    @Test
    void everySheetBearsTheWarningAndItsNumber() {
        Drawn drawn = townHouse();
        int count = drawn.sheets().size();
        drawn.sheets().forEach((sheet, one) -> {
            String all = String.join(" ", one.texts().stream().map(Text::words).toList());
            int number = drawn.drawing().sheets().indexOf(sheet) + 1;
            assertThat(all).contains("Isolate all sources", "prove dead", "Sheet %d of %d".formatted(number, count));
        });
    }

    @Test
    void cardsAreA4AndTheWholeIsA3() {
        for (TerminalSheet sheet : townHouse().drawing().sheets()) {
            boolean card = sheet.name().startsWith("card");
            assertThat(sheet.widthMm()).isEqualTo(card ? 210 : 420);
            assertThat(sheet.heightMm()).isEqualTo(297);
        }
    }

    @Test
    void oneDeviceCanBeDrawnAlone() {
        TerminalDrawing one = townHouse().drawing().only(new ThingId("islanding-switch"));
        assertThat(one.sheets()).hasSize(1);
        assertThat(one.devices()).containsExactly(new ThingId("islanding-switch"));
        assertThat(townHouse().drawing().only(new ThingId("sauna")).sheets()).isEmpty();
    }

    @Test
    void theSameSiteGivesTheSameBytes() {
        Site site = Houses.read(Houses.FARMHOUSE);
        List<String> once = svgs(Drawn.of(site));
        assertThat(svgs(Drawn.of(site))).isEqualTo(once);
    }

    private static List<String> svgs(Drawn drawn) {
        return drawn.drawing().sheets().stream().map(TerminalSheet::svg).toList();
    }

    @Test
    void aPortWithoutAnyConductorIsDrawnAsFree() {
        Drawn drawn = townHouse();
        long free = drawn.net().terminals().stream()
                .filter(terminal -> drawn.net().wiresAt(terminal).isEmpty())
                .count();
        assertThat(drawn.onCards("no conductor")).isEqualTo(free);
    }
}
