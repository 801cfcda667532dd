package tideover.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.xml.sax.InputSource;
import tideover.engine.installation.Installation;
import tideover.engine.network.house.HouseFlow;
import tideover.engine.network.house.Regime;
import tideover.engine.rules.Digest;
import tideover.engine.rules.Unit;
import tideover.engine.site.Battery;
import tideover.engine.site.Board;
import tideover.engine.site.Circuit;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.PvArray;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.files.FieldTable;
import tideover.papers.Stamp;
import tideover.papers.Wording;
import tideover.papers.diagram.Diagram;
import tideover.papers.diagram.FlowNotes;
import tideover.papers.drawing.DrawingStyle;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;
import tideover.reference.papers.DrawnSheet.Area;
import tideover.reference.papers.DrawnSheet.Line;
import tideover.reference.papers.DrawnSheet.Text;

/** Drawings inside a page: inked by the page, touchable, and with what flows noted in pencil. */
class DrawingInPageTest {

    private static final Wording WORDING = Wording.of(Locale.ENGLISH, FieldTable.load());
    private static final Stamp STAMP = new Stamp(Digest.of("revision"), LocalDate.of(2026, 11, 25));

    private static Diagram diagram(Site site) {
        return Diagram.of(Installation.of(site), WORDING, STAMP);
    }

    static Stream<Site> manySites() {
        return Stream.concat(
                Houses.all().stream()
                        .filter(path -> !path.toString().contains("troubled"))
                        .map(Houses::read),
                GeneratedSites.sites(12));
    }

    static List<Path> houses() {
        return List.of(Houses.TOWN_HOUSE, Houses.FARMHOUSE);
    }

    @ParameterizedTest
    @EnumSource(OperatingState.class)
    void aPageIsGivenNoStyleNoTypefaceAndNoIdOfItsOwn(OperatingState state) throws Exception {
        String svg = diagram(Houses.read(Houses.TOWN_HOUSE)).in(state).pageSvg();
        assertThat(svg)
                .startsWith("<svg ")
                .doesNotContain("<style", "style=", "@font-face", "<?xml", " id=\"", "<script");
        // Well-formed, or this throws.
        DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
    }

    @ParameterizedTest
    @MethodSource("houses")
    void everyCircuitBoardDeviceAndSourceCanBeTouched(Path house) {
        Installation installation = Installation.of(Houses.read(house));
        Set<String> touchable = things(diagram(Houses.read(house)).pageSvg());
        List<String> expected = new ArrayList<>(List.of(ThingId.SUPPLY.text()));
        for (Thing thing : installation.things())
            if (thing instanceof Circuit
                    || thing instanceof Board
                    || thing instanceof IslandingSwitch
                    || thing instanceof Inverter
                    || thing instanceof Battery
                    || thing instanceof PvArray) expected.add(thing.id().text());
        assertThat(expected).hasSizeGreaterThan(15);
        assertThat(touchable).containsAll(expected);
    }

    private static Set<String> things(String svg) {
        return found("data-thing=\"([^\"]+)\"", svg);
    }

    private static Set<String> found(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map(result -> result.group(1))
                .collect(Collectors.toSet());
    }

    @Test
    void theDoubleLineRunsThroughTheWholeSheetInThePageToo() {
        String svg = diagram(Houses.read(Houses.TOWN_HOUSE)).pageSvg();
        String file = diagram(Houses.read(Houses.TOWN_HOUSE)).svg();
        // Filled in black and as long as the sheet allows: nothing else is.
        Pattern bar = Pattern.compile("<path class=\"tk\" d=\"M[^\"]*L413 [^\"]*Z\"/>");
        List<String> inFile =
                bar.matcher(file).results().map(MatchResult::group).toList();
        assertThat(inFile).hasSize(2);
        assertThat(bar.matcher(svg).results().map(MatchResult::group)).isEqualTo(inFile);
    }

    @Test
    void theStyleSheetKnowsEveryInkAndWeightDrawn() {
        String css = DrawingStyle.css();
        Set<String> styled = found("\\.td-diagram \\.(\\w+)\\{", css);
        Set<String> drawn = new HashSet<>();
        for (OperatingState state : OperatingState.values())
            for (String classes : found(
                    "class=\"([a-z ]+)\"",
                    diagram(Houses.read(Houses.FARMHOUSE)).in(state).pageSvg()))
                drawn.addAll(List.of(classes.split(" ")));
        assertThat(drawn).hasSizeGreaterThan(12);
        assertThat(styled).containsAll(drawn);
        assertThat(css).contains(".td-diagram .li{stroke:var(--td-island,#0f4c5c)}");
    }

    @Test
    void thePageAndTheFileHaveTheSameInksAndWeights() {
        String file = diagram(Houses.read(Houses.TOWN_HOUSE)).svg();
        String inPage = DrawingStyle.css().replaceAll("var\\(--td-[a-z]+,(#[0-9a-f]{6})\\)", "$1");
        Set<String> rules = Set.copyOf(found("(?m)^(\\.td-diagram .*)$", file));
        assertThat(rules).hasSizeGreaterThan(20);
        assertThat(found("(?m)^(\\.td-diagram .*)$", inPage)).containsAll(rules);
    }

    @Test
    void aThingCanBeALinkAndNeverALinkInsideALink() {
        String svg = diagram(Houses.read(Houses.FARMHOUSE))
                .pageSvg(thing ->
                        thing.equals(ThingId.SUPPLY) ? Optional.empty() : Optional.of("/a?b=1&thing=" + thing));
        assertThat(svg).contains("<a href=\"/a?b=1&amp;thing=islanding-switch\" data-thing=\"islanding-switch\">");
        assertThat(svg).contains("<g data-thing=\"supply\">");
        int depth = 0;
        for (MatchResult tag :
                Pattern.compile("<(/?)a[ >]").matcher(svg).results().toList()) {
            depth += tag.group(1).isEmpty() ? 1 : -1;
            assertThat(depth).isBetween(0, 1);
        }
        assertThat(depth).isZero();
    }

    @Test
    void whatIsTypedNeverBecomesMarkup() {
        Site site =
                Houses.with(Houses.TOWN_HOUSE, List.of("sauna.designation: '<script>alert(1)</script>\" onload=\"x'"));
        Map<ThingId, String> notes = Map.of(new ThingId("sauna"), "<b>1 A</b>");
        String svg = diagram(site).with(notes).pageSvg(thing -> Optional.of("\"><script>"));
        assertThat(svg).doesNotContain("<script", "<b>", "\" onload=\"").contains("&lt;b&gt;1 A&lt;/b&gt;");
    }

    @ParameterizedTest
    @MethodSource("manySites")
    void notesAtEveryThingLieOnNothingElse(Site site) throws Exception {
        Diagram diagram = diagram(site).with(notes(site, "L1 16.2 A · L2 5.1 A · L3 12.4 A · 227 V"));
        DrawnSheet sheet =
                new DrawnSheet(diagram.in(OperatingState.ISLAND_GRID_DEAD).svg());
        List<Text> texts = sheet.texts();
        assertThat(texts).filteredOn(text -> text.words().contains("227 V")).isNotEmpty();
        List<String> trouble = new ArrayList<>();
        Area frame = new Area(15, 7, sheet.width() - 7, sheet.height() - 7);
        for (int i = 0; i < texts.size(); i++) {
            Text text = texts.get(i);
            if (!text.area().isInside(frame)) trouble.add(text.words() + " outside");
            for (int j = i + 1; j < texts.size(); j++)
                if (text.area().overlaps(texts.get(j).area()))
                    trouble.add(text.words() + " on " + texts.get(j).words());
            Area core = new Area(
                    text.area().left() + 0.5f,
                    text.area().top() + 0.5f,
                    text.area().right() - 0.5f,
                    text.area().bottom() - 0.5f);
            for (Line line : sheet.lines())
                if ((line.x1() == line.x2() || line.y1() == line.y2())
                        && core.isCrossedBy(line)
                        && !text.words().equals("M")
                        && !text.words().equals("Wh")) trouble.add(text.words() + " by " + line);
        }
        assertThat(trouble).isEmpty();
    }

    @Test
    void whatFlowsStandsAtEveryThingThatHasVoltageAndAtNoOther() throws Exception {
        Site site = Houses.read(Houses.TOWN_HOUSE);
        HouseFlow flow = (HouseFlow) Houses.studies(site).flow().flow(OperatingState.ISLAND_GRID_DEAD, Regime.DRAWING);
        Map<ThingId, String> notes = FlowNotes.of(flow, WORDING);
        Circuit lights = (Circuit) site.planned().get(new ThingId("lights-upper"));
        double currentA = flow.lineCurrentsA(lights).largest();
        assertThat(currentA).isBetween(0.1, 10.0);
        assertThat(notes.get(lights.id()).replace('\u00a0', ' '))
                .matches("L[123] "
                        + WORDING.amount(Math.round(10 * currentA) / 10.0, Unit.A)
                                .replace(".", "\\.") + " · 2[23]\\d V");
        // Grid-only: without voltage while the grid is dead.
        assertThat(notes).doesNotContainKeys(new ThingId("sauna"), ThingId.SUPPLY);
        List<String> drawn = new DrawnSheet(diagram(site)
                        .in(OperatingState.ISLAND_GRID_DEAD)
                        .with(notes)
                        .svg())
                .texts().stream().map(Text::words).toList();
        assertThat(drawn).contains(notes.get(lights.id()).replace('\u00a0', ' '));
    }

    private static Map<ThingId, String> notes(Site site, String note) {
        Map<ThingId, String> notes = new HashMap<>();
        notes.put(ThingId.SUPPLY, note);
        for (Thing thing : Installation.of(site).things()) notes.put(thing.id(), note);
        return notes;
    }

    @Test
    void theDrawingDoesNotMoveWhileNumbersChangeALittle() {
        Site site = Houses.read(Houses.TOWN_HOUSE);
        String less = diagram(site).with(notes(site, "L1 6.2 A · 227 V")).pageSvg();
        String more = diagram(site).with(notes(site, "L1 6.9 A · 226 V")).pageSvg();
        assertThat(less).contains("6.2 A").isNotEqualTo(more);
        assertThat(more.replaceAll("6\\.9 A · 226", "6.2 A · 227")).isEqualTo(less);
    }

    @Test
    void withoutNotesTheDrawingIsTheSame() {
        Diagram diagram = diagram(Houses.read(Houses.TOWN_HOUSE));
        assertThat(diagram.with(Map.of()).svg()).isEqualTo(diagram.svg());
    }
}
