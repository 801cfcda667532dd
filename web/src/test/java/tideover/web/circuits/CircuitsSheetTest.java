package tideover.web.circuits;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions.HasAttributeOptions;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.FilePayload;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.Origin;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.ThingId;
import tideover.store.site.VariantId;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

/** The circuits sheet in a real browser over a real store; what is kept is looked at past the pages. */
@Tag("slow")
class CircuitsSheetTest extends BrowserTest {
    private String site = "";

    @BeforeEach
    void townHouse() {
        site = desk.importExample("town-house.yaml");
    }

    @Test
    void anEditIsKeptAndItsFindingChangesInTheMargin() {
        Page page = sheet(page());
        Locator notes = page.locator("#margin .td-note[data-place='hob']");
        assertThat(notes).hasCount(0);
        type(page, cell(page, "hob", "protection"), "C63", "Enter");
        isRevision(page, 2);
        assertThat(notes.first()).containsText("✕ Not met");
        assertThat(page.locator("#saved")).containsText("Revision 2");
        assertThat(page.locator("#way")).containsText("not met");
        assertThat(circuit("hob").value("protection.ratedCurrentA")).isEqualTo(63.0);
        page.keyboard().press("Control+z");
        isRevision(page, 3);
        assertThat(notes).hasCount(0);
    }

    @Test
    void aDeviceIsTypedAsItIsPrintedOnIt() {
        Page page = sheet(page());
        type(page, cell(page, "oven", "protection"), "c 20", "Enter");
        isRevision(page, 2);
        assertThat(cell(page, "oven", "protection")).hasText("C20");
        assertThat(circuit("oven").value("protection.ratedCurrentA")).isEqualTo(20.0);
        assertThat(circuit("oven").value("protection.breakingCapacityA")).isEqualTo(6000.0);
    }

    @Test
    void whatCannotBeIsRefusedWithASentenceAndNothingIsKept() {
        Page page = sheet(page());
        type(page, cell(page, "oven", "cable.lengthM"), "long", "Enter");
        assertThat(page.locator(".td-problems")).containsText("Oven");
        assertThat(page.locator(".td-problems")).containsText("long");
        assertThat(cell(page, "oven", "cable.lengthM")).hasText("13");
        isRevision(page, 1);
    }

    @Test
    void thirtyRowsOfASpreadsheetBecomeCircuits() {
        Page page = sheet(page());
        StringBuilder rows = new StringBuilder();
        for (int i = 1; i <= 30; i++)
            rows.append("Pasted %d\tL%d N PE\tB16\t\t2.5\tB2\t%d\tsockets\t%d\tcan wait\n"
                    .formatted(i, 1 + i % 3, 5 + i, 100 * i));
        Locator last =
                page.locator("tbody[data-feeder='rcd-grid'] .td-grid__row").last();
        last.locator(".td-grid__cell").first().click();
        paste(page, rows.toString());
        isRevision(page, 2);
        List<Circuit> pasted = head().planned().values().stream()
                .filter(Circuit.class::isInstance)
                .map(Circuit.class::cast)
                .filter(circuit ->
                        circuit.designation() != null && circuit.designation().startsWith("Pasted"))
                .toList();
        assertThat(pasted).hasSize(30).allSatisfy(circuit -> {
            assertThat(circuit.fedFrom()).isEqualTo(new ThingId("rcd-grid"));
            assertThat(circuit.value("protection.curve")).hasToString("B");
        });
        assertThat(pasted.get(29).value("load.powerW")).isEqualTo(3000.0);
        page.keyboard().press("Control+z");
        isRevision(page, 3);
        assertThat(head().planned()).doesNotContainKey(new ThingId("circuit-30"));
    }

    @Test
    void aCircuitIsDraggedOverTheLine() {
        Page page = sheet(page(options(Screen.DESKTOP).setViewportSize(1440, 2400)));
        Locator oven = page.locator("[data-circuit='oven']");
        assertThat(oven.locator(".td-grid__side")).containsText("stays on");
        oven.locator(".td-grid__handle")
                .dragTo(page.locator("tbody[data-feeder='rcd-grid'] .td-grid__row")
                        .nth(1));
        isRevision(page, 2);
        assertThat(page.locator("tbody[data-feeder='rcd-grid'] [data-circuit='oven'] .td-grid__side"))
                .containsText("grid-only");
        assertThat(head().statuses().get(new ThingId("oven"))).isEqualTo(Status.ALTERED);
        page.locator("[data-circuit='oven'] .td-grid__handle")
                .dragTo(page.locator("tbody[data-feeder='rcd-ground'] .td-grid__row")
                        .nth(1));
        isRevision(page, 3);
        assertThat(head().statuses().get(new ThingId("oven"))).isEqualTo(Status.EXISTING);
    }

    @Test
    void severalCellsAreFilledDownAndUndoneTogether() {
        Page page = sheet(page());
        cell(page, "living-sockets", "cable.lengthM").click();
        page.keyboard().press("Shift+ArrowUp");
        page.keyboard().press("Shift+ArrowUp");
        List<String> before = page.locator(".td-grid__cell--picked").allTextContents();
        assertThat(before).hasSize(3);
        page.keyboard().press("Control+d");
        isRevision(page, 2);
        assertThat(page.locator(".td-grid__cell--picked").allTextContents()).containsOnly(before.get(0));
        page.keyboard().press("Control+z");
        isRevision(page, 3);
        assertThat(page.locator(".td-grid__cell--picked").allTextContents()).isEqualTo(before);
    }

    @Test
    void whatIsTypedWhileAnAnswerIsOnTheWayGoesOn() {
        Page page = sheet(page());
        type(page, cell(page, "oven", "cable.lengthM"), "19", "Enter");
        page.keyboard().type("21");
        page.keyboard().press("Enter");
        page.keyboard().type("2");
        isRevision(page, 3);
        assertThat(page.locator(".td-grid__input")).hasValue("2");
        page.keyboard().type("3");
        page.keyboard().press("Enter");
        isRevision(page, 4);
        assertThat(circuit("oven").value("cable.lengthM")).isEqualTo(19.0);
    }

    @Test
    void twoWindowsThatChangeOneFactAreBothToldWhatIsThere() {
        Page one = sheet(page());
        Page other = sheet(page());
        type(one, cell(one, "oven", "cable.lengthM"), "15", "Enter");
        isRevision(one, 2);
        // Another fact of the same circuit is no conflict.
        type(other, cell(other, "oven", "load.powerW"), "3000", "Enter");
        isRevision(other, 3);
        type(one, cell(one, "oven", "load.powerW"), "3200", "Enter");
        assertThat(one.locator(".td-problems")).containsText("Changed in another window");
        assertThat(one.locator(".td-problems")).containsText("3000");
        assertThat(circuit("oven").value("load.powerW")).isEqualTo(3000.0);
        one.getByText("Write what I wanted").click();
        isRevision(one, 4);
        assertThat(circuit("oven").value("load.powerW")).isEqualTo(3200.0);
    }

    @Test
    void theWholeSheetIsWorkedWithTheKeyboardAlone() {
        Page page = sheet(page());
        Locator first = page.locator(".td-grid__cell").first();
        for (int i = 0; i < 80 && !Boolean.TRUE.equals(first.evaluate("cell => cell === document.activeElement")); i++)
            page.keyboard().press("Tab");
        assertThat(first).isFocused();
        page.keyboard().press("ArrowDown");
        page.keyboard().press("End");
        page.keyboard().press("Enter");
        page.keyboard().type("must run");
        page.keyboard().press("Enter");
        isRevision(page, 2);
        page.keyboard().press("ArrowUp");
        page.keyboard().press("F2");
        assertThat(page.locator(".td-grid__input")).hasValue("must run");
        page.keyboard().press("Escape");
        page.keyboard().press("Delete");
        isRevision(page, 3);
    }

    @Test
    void withoutScriptACircuitIsAddedAndTakenOut() {
        Page page = sheet(pageWithoutScript(Screen.DESKTOP));
        page.locator("tbody[data-feeder='rcd-grid']").getByText("Add a circuit").click();
        isRevision(page, 2);
        Locator added = page.locator("tbody[data-feeder='rcd-grid'] [data-circuit='circuit-1']");
        assertThat(added).containsText("New circuit");
        added.getByText("✕").click();
        isRevision(page, 3);
        assertThat(added).hasCount(0);
        page.locator("[data-circuit='oven']").getByText("✕").click();
        isRevision(page, 4);
        page.getByText("let it stay").click();
        isRevision(page, 5);
        assertThat(page.locator("[data-circuit='oven']")).hasCount(1);
    }

    @Test
    void aFactThatWasOnlyAssumedIsNotAnyMoreOnceSomebodyTypesIt() {
        site = desk.importSite("""
                format: 1
                house:
                  place: {designation: Larch lane 4, country: DE}
                  supply: {earthingSystem: TN_S, lines: THREE, mainFuse: {kind: FUSE, ratedCurrentA: 35}}
                  boards:
                    - {id: board, designation: Board, fedFrom: supply, conductors: [L1, L2, L3, N, PE]}
                  circuits:
                    - {id: oven, designation: Oven, fedFrom: board, conductors: [L1, N, PE], cable: {lengthM: 10}}
                """);
        Page page = open(page(), site + "/circuits?side=house");
        assertThat(head().origins().of(FactId.of("oven.cable.lengthM"))).isEqualTo(Origin.ASSUMED);
        type(page, cell(page, "oven", "cable.lengthM"), "12", "Enter");
        isRevision(page, 2);
        assertThat(head().origins().of(FactId.of("oven.cable.lengthM"))).isEqualTo(Origin.MEASURED);
        assertThat(head().origins().of(FactId.of("oven.conductors"))).isEqualTo(Origin.ASSUMED);
    }

    @Test
    void theListIsTakenToASpreadsheetAndBroughtBack() {
        Page page = sheet(pageWithoutScript(Screen.DESKTOP));
        Download taken = page.waitForDownload(() -> page.getByText("as CSV").click());
        String list = text(taken);
        String changed = list.replace(",Oven,", ",\"Oven, double\",") + "pond-pump,Pond pump,rcd-grid\r\n";
        assertThat(list).contains(",Oven,");
        page.locator("summary", new Page.LocatorOptions().setHasText("bring a CSV"))
                .click();
        page.locator("input[type=file]").setInputFiles(new FilePayload("list.csv", "text/csv", bytes(changed)));
        page.getByText("Bring in").click();
        assertThat(page.locator(".td-said")).containsText("One circuit is new");
        isRevision(page, 2);
        assertThat(circuit("oven").designation()).isEqualTo("Oven, double");
        assertThat(circuit("pond-pump").fedFrom()).isEqualTo(new ThingId("rcd-grid"));
        page.locator("summary", new Page.LocatorOptions().setHasText("bring a CSV"))
                .click();
        page.locator("input[type=file]")
                .setInputFiles(new FilePayload("list.csv", "text/csv", bytes("id,colour\r\noven,red\r\n")));
        expectTrouble("status of 422");
        page.getByText("Bring in").click();
        assertThat(page.locator(".td-problems")).containsText("colour");
        isRevision(page, 2);
    }

    private static String text(Download download) {
        try (InputStream in = download.createReadStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void theDecimalSignIsTheReaders() {
        Page page = sheet(page(options(Screen.DESKTOP).setLocale("de-DE")));
        assertThat(cell(page, "oven", "cable.crossSectionMm2")).hasText("2,5");
        type(page, cell(page, "oven", "cable.lengthM"), "13,5 m", "Enter");
        isRevision(page, 2);
        assertThat(circuit("oven").value("cable.lengthM")).isEqualTo(13.5);
    }

    @ParameterizedTest
    @EnumSource(Screen.class)
    void nothingSeriousKeepsAnybodyOut(Screen screen) {
        assertOpenToAll(sheet(page(screen)));
        assertOpenToAll(sheet(page(options(screen).setColorScheme(ColorScheme.DARK))));
    }

    private Page sheet(Page page) {
        return open(page, site + "/circuits");
    }

    private static Locator cell(Page page, String circuit, String field) {
        return page.locator("[data-circuit='%s'] [data-path$='.%s.%s']".formatted(circuit, circuit, field));
    }

    private static void type(Page page, Locator cell, String text, String end) {
        cell.click();
        page.keyboard().type(text);
        page.keyboard().press(end);
    }

    private static void paste(Page page, String text) {
        page.evaluate("""
                text => {
                  const board = new DataTransfer();
                  board.setData('text/plain', text);
                  document.activeElement.dispatchEvent(new ClipboardEvent('paste', { clipboardData: board, bubbles: true }));
                }""", text);
    }

    private static void isRevision(Page page, int number) {
        assertThat(page.locator("#sheet"))
                .hasAttribute(
                        "data-base", Pattern.compile("^" + number + "$"), new HasAttributeOptions().setTimeout(20_000));
    }

    private Site head() {
        return desk.store()
                .sites()
                .head(new VariantId(site.substring(site.lastIndexOf('/') + 1)))
                .site();
    }

    private Circuit circuit(String id) {
        return (Circuit) head().planned().get(new ThingId(id));
    }
}
