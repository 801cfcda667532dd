package tideover.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Digest;
import tideover.engine.site.Circuit;
import tideover.engine.site.ControlCable;
import tideover.engine.site.IslandSettings;
import tideover.engine.site.Isolator;
import tideover.engine.site.Nameplate;
import tideover.engine.site.Notice;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Port;
import tideover.engine.site.PowerTerminals;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.files.FieldTable;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.diagram.Diagram;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;
import tideover.reference.papers.DrawnSheet.Area;
import tideover.reference.papers.DrawnSheet.Line;
import tideover.reference.papers.DrawnSheet.Text;

/** The one-line diagram as a careful draughtsman would hand it over. */
class DiagramTest {

    private static final Wording WORDING = Wording.of(Locale.ENGLISH, FieldTable.load());
    private static final Stamp STAMP = new Stamp(Digest.of("revision"), LocalDate.of(2026, 11, 25));

    private static final Map<Site, Diagram> DRAWN = new ConcurrentHashMap<>();

    static Stream<Path> soundHouses() {
        return Houses.all().stream().filter(path -> !path.toString().contains("troubled"));
    }

    static Stream<Site> manySites() {
        return Stream.concat(Houses.all().stream().map(Houses::read), GeneratedSites.sites(40));
    }

    /** Each house is laid out once for all tests. */
    private static Diagram diagram(Site site) {
        return DRAWN.computeIfAbsent(site, DiagramTest::anew);
    }

    private static Diagram anew(Site site) {
        return Diagram.of(Installation.of(site), WORDING, STAMP);
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void noTextLiesOnAnother(Site site) throws Exception {
        List<Text> texts =
                new DrawnSheet(diagram(site).in(OperatingState.ISLAND_GRID_DEAD).svg()).texts();
        List<String> overlaps = new ArrayList<>();
        for (int i = 0; i < texts.size(); i++)
            for (int j = i + 1; j < texts.size(); j++)
                if (texts.get(i).area().overlaps(texts.get(j).area()))
                    overlaps.add(texts.get(i).words() + " on " + texts.get(j).words());
        assertThat(overlaps).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void noConductorRunsThroughAText(Site site) throws Exception {
        DrawnSheet sheet = new DrawnSheet(diagram(site).svg());
        List<String> crossed = new ArrayList<>();
        for (Text text : sheet.texts()) {
            // A text may stand close to its conductor: half a millimetre is left out all around.
            Area core = new Area(
                    text.area().left() + 0.5f,
                    text.area().top() + 0.5f,
                    text.area().right() - 0.5f,
                    text.area().bottom() - 0.5f);
            for (Line line : sheet.lines())
                if (isLevelOrUpright(line) && core.isCrossedBy(line) && !isInSymbol(text))
                    crossed.add(text.words() + " by " + line);
        }
        assertThat(crossed).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("soundHouses")
    void noConductorCrossesAnother(Path house) throws Exception {
        List<Line> conductors = new DrawnSheet(
                        diagram(Houses.read(house)).in(OperatingState.CONNECTED).svg())
                .conductors();
        List<String> crossings = new ArrayList<>();
        for (Line one : conductors)
            for (Line other : conductors) if (one.crosses(other)) crossings.add(one + " and " + other);
        assertThat(crossings).isEmpty();
    }

    /** Letters inside a symbol: M in the circle of a motor, Wh in that of a meter. */
    private static boolean isInSymbol(Text text) {
        return text.words().equals("M") || text.words().equals("Wh");
    }

    private static boolean isLevelOrUpright(Line line) {
        return line.x1() == line.x2() || line.y1() == line.y2();
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void everyTextStandsInsideTheFrame(Site site) throws Exception {
        DrawnSheet sheet =
                new DrawnSheet(diagram(site).in(OperatingState.BY_PASSED).svg());
        // Frame: 15 mm left for the binding, 7 mm on the other sides.
        Area frame = new Area(15, 7, sheet.width() - 7, sheet.height() - 7);
        assertThat(sheet.texts())
                .filteredOn(text -> !text.area().isInside(frame))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void everyDeviceAndCircuitIsNamed(Site site) throws Exception {
        Installation installation = Installation.of(site);
        Wording names = WORDING.with(installation);
        List<String> drawn = new DrawnSheet(diagram(site).svg()).titles();
        for (Thing thing : installation.things())
            // Isolators stand at their sources, under the names of those; notices and control wiring are drawn
            // elsewhere.
            if (!(thing instanceof Notice) && !(thing instanceof Isolator) && !isControlWiring(thing))
                assertThat(drawn).contains(names.name(thing.id()));
        assertThat(drawn).contains(names.name(ThingId.SUPPLY));
    }

    private static boolean isControlWiring(Thing thing) {
        return thing instanceof Port
                || thing instanceof ControlCable
                || thing instanceof PowerTerminals
                || thing instanceof IslandSettings
                || thing instanceof Nameplate;
    }

    @ParameterizedTest
    @MethodSource("soundHouses")
    void theNameOfEveryCircuitCanBeReadOnTheSheet(Path house) throws Exception {
        Installation installation = Installation.of(Houses.read(house));
        String all = String.join(
                "\n",
                new DrawnSheet(diagram(Houses.read(house)).svg())
                        .texts().stream().map(Text::words).toList());
        for (Circuit circuit : installation.circuits()) assertThat(all).contains(circuit.designation());
    }

    @Test
    void fortyCircuitsStandOnA3WithCapitalsOfTwoMillimetres() throws Exception {
        Site forty = Houses.with(Houses.TOWN_HOUSE, List.of());
        List<Thing> circuits = IntStream.rangeClosed(1, 12)
                .mapToObj(i -> (Thing) circuit(forty, "bedroom-sockets", "further-" + i, "Further sockets " + i))
                .toList();
        Site site = forty;
        for (Thing circuit : circuits) site = site.withPlanned(circuit);
        assertThat(Installation.of(site).circuits()).hasSize(40);
        Diagram diagram = diagram(site);
        assertThat(diagram.widthMm()).isEqualTo(420);
        assertThat(diagram.heightMm()).isEqualTo(297);
        // Capitals of this typeface are 0.668 of its size high: 3 mm give 2 mm.
        assertThat(new DrawnSheet(diagram.svg()).texts()).allMatch(text -> text.size() >= 3);
    }

    private static Circuit circuit(Site site, String like, String id, String designation) {
        Circuit c = (Circuit) site.planned().get(new ThingId(like));
        return new Circuit(
                new ThingId(id),
                designation,
                c.fedFrom(),
                c.neutralFrom(),
                c.conductors(),
                c.cable(),
                c.protection(),
                c.rcd(),
                c.load(),
                c.sharedNeutralWith(),
                c.importance(),
                c.stayOn(),
                c.loopImpedanceOhm(),
                c.year(),
                c.edition());
    }

    @Test
    void moreCircuitsTakeALargerSheetAndNoSmallerLetters() throws Exception {
        Site site = Houses.read(Houses.TOWN_HOUSE);
        for (int i = 1; i <= 30; i++)
            site = site.withPlanned(circuit(site, "bedroom-sockets", "further-" + i, "Further sockets " + i));
        Diagram diagram = diagram(site);
        assertThat(diagram.heightMm()).isEqualTo(420);
        assertThat(new DrawnSheet(diagram.svg()).texts()).allMatch(text -> text.size() >= 3);
    }

    @ParameterizedTest
    @EnumSource(OperatingState.class)
    void theSameSiteGivesTheSameBytes(OperatingState state) {
        Site site = Houses.read(Houses.FARMHOUSE);
        assertThat(diagram(site).in(state).svg())
                .isEqualTo(diagram(site).in(state).svg());
    }

    @Test
    void whatHasVoltageIsStrongAndWhatHasNoneIsDashed() {
        Site site = Houses.read(Houses.TOWN_HOUSE);
        Diagram diagram = diagram(site);
        // Grid dead: sauna and car charger hang on the grid side, the lights on the island side.
        String dead = diagram.in(OperatingState.ISLAND_GRID_DEAD).svg();
        assertThat(group(dead, "sauna")).contains("\"ld x\"").doesNotContain("\"lg f\"");
        assertThat(group(dead, "lights-upper")).contains("\"li f\"").doesNotContain("\"ld x\"");
        String waiting = diagram.in(OperatingState.ISLAND_GRID_WAITING).svg();
        assertThat(group(waiting, "sauna")).contains("\"lg f\"").doesNotContain("\"ld x\"");
        String dark = diagram.in(OperatingState.DARK).svg();
        assertThat(group(dark, "lights-upper")).contains("\"ld x\"").doesNotContain("\"li f\"");
        // Modules and batteries stay live in every state.
        assertThat(group(dark, "pv-east")).contains("\"li f\"").doesNotContain("\"ld x\"");
    }

    @Test
    void theIslandingSwitchStandsOpenInTheIslandAndClosedWhenConnected() {
        Diagram diagram = diagram(Houses.read(Houses.TOWN_HOUSE));
        assertThat(group(diagram.in(OperatingState.CONNECTED).svg(), "islanding-switch"))
                .contains("closed");
        assertThat(group(diagram.in(OperatingState.ISLAND_GRID_DEAD).svg(), "islanding-switch"))
                .contains("open");
        assertThat(group(diagram.in(OperatingState.BY_PASSED).svg(), "by-pass")).contains("closed");
    }

    @Test
    void aNeutralFromElsewhereStandsBesideTheCircuit() throws Exception {
        Site site = Houses.with(Houses.TOWN_HOUSE, List.of("sauna.neutralFrom: main-board"));
        assertThat(group(diagram(site).svg(), "sauna")).contains("N from", "Main board");
    }

    @Test
    void aCircuitBehindTheSwitchOnALineWithoutSourceIsNotMarkedAsStayingOn() throws Exception {
        // The island has L1 alone; the washing machine lies on L3.
        Path house = Houses.EXAMPLES.resolve("arrangements/one-phase-island.yaml");
        Site site = Houses.with(house, List.of("washing-machine.fedFrom: rcd-island"));
        assertThat(group(diagram(site).svg(), "washing-machine"))
                .contains("no island source")
                .contains("class=\"lg n\"");
        // Grid ink in a circuit above the line can only be the hatch of its mark.
        assertThat(group(diagram(site).svg(), "lights")).doesNotContain("class=\"lg n\"");
    }

    private static String group(String svg, String thing) {
        int start = svg.indexOf("<g id=\"thing-" + thing + "\"");
        return svg.substring(start, svg.indexOf("</g>", start));
    }
}
