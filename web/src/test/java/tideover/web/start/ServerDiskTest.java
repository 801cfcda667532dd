package tideover.web.start;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.files.FieldTable;
import tideover.store.Store;
import tideover.store.site.RevisionId;
import tideover.store.site.VariantId;
import tideover.web.trial.Axe;
import tideover.web.trial.Program;
import tideover.web.trial.ServedProcess;
import tools.jackson.databind.json.JsonMapper;

/** No room is left while people work: the system lets no file of the workbench grow, as on a full disk. */
@Tag("slow")
class ServerDiskTest {
    private static final String FULL = "4096";
    private static final String ROOM = "unlimited";
    private static final String SENTENCE = "Not saved: ";

    static {
        Main.quietLibraries();
    }

    @TempDir
    private Path folder;

    private ServedProcess workbench;
    private VariantId variant;
    private String site;

    @BeforeEach
    void open() throws IOException {
        workbench = ServedProcess.open(folder.resolve("data"));
        byte[] house = Files.readAllBytes(Path.of("..", "examples", "town-house.yaml"));
        String head = Program.text(workbench.program().post("/api/sites", house));
        variant = new VariantId(
                new JsonMapper().readTree(head).at("/variant/variant").asString());
        site = "/sites/" + variant;
    }

    @AfterEach
    void close() {
        workbench.close();
    }

    @Test
    void onTheSheetASentenceIsSaidAndWhatWasTypedStaysUntilItIsSaved() {
        Page page = workbench.page();
        try {
            page.navigate(workbench.at(site + "/circuits"));
            Locator length = cell(page, "oven", "cable.lengthM");
            Locator power = cell(page, "oven", "load.powerW");
            workbench.limitFiles(FULL);
            type(page, length, "17");
            Locator said = page.locator("#sheet > .td-problems");
            assertThat(said).containsText(SENTENCE);
            assertThat(said).containsText("What you typed still stands here");
            assertThat(page.locator("#saved")).containsText("not everything is saved");
            assertThat(Axe.serious(page)).isEmpty();
            assertThat(length).hasText("17");
            type(page, power, "3100");
            type(page, length, "18");
            answered(page);
            assertThat(said).hasCount(1);
            assertThat(length).hasText("18");
            assertThat(power).hasText("3100");
            again(said);
            answered(page);
            assertThat(said).containsText(SENTENCE);
            assertThat(length).hasText("18");
            assertThat(page.locator("#sheet")).hasAttribute("data-base", "1");
            workbench.limitFiles(ROOM);
            again(said);
            assertThat(page.locator("#sheet")).hasAttribute("data-base", "2");
            assertThat(page.locator("#saved")).containsText("every change is saved");
            assertThat(said).hasCount(0);
            assertThat(length).hasText("18");
            assertThat(power).hasText("3100");
            assertThat(facts()).containsExactly("18", "3100");
        } finally {
            page.context().close();
        }
    }

    @Test
    void theSheetSaysThatNobodyAnswersAnyMoreAndKeepsWhatWasTyped() {
        Page page = workbench.page();
        try {
            page.navigate(workbench.at(site + "/circuits"));
            workbench.kill();
            workbench.waited();
            Locator length = cell(page, "oven", "cable.lengthM");
            type(page, length, "17");
            assertThat(page.locator("#sheet > .td-problems")).containsText("The workbench does not answer");
            assertThat(length).hasText("17");
        } finally {
            page.context().close();
        }
    }

    @Test
    void aFormCanBeSentAgainFromThePageThatSaysIt() {
        Page page = workbench.page();
        try {
            page.navigate(workbench.at(site + "/things/oven"));
            Locator length = page.locator("input[name=path][value$='plan.oven.cable.lengthM'] ~ [name=typed]");
            length.fill("17");
            workbench.limitFiles(FULL);
            page.locator(".td-facts__save button").click();
            assertThat(page.locator("main")).containsText(SENTENCE);
            again(page.locator("main"));
            assertThat(page.locator("main")).containsText(SENTENCE);
            workbench.limitFiles(ROOM);
            again(page.locator("main"));
            assertThat(length).hasValue("17");
            assertThat(facts().get(0)).isEqualTo("17");
        } finally {
            page.context().close();
        }
    }

    @Test
    void inTheSurveyTheFieldKeepsWhatWasTyped() {
        Page page = workbench.page();
        try {
            page.navigate(workbench.at(newSite() + "/survey"));
            Locator earthing = page.locator("#supply_earthingSystem");
            Locator field = earthing.locator("[name=typed]");
            Locator save = earthing.getByRole(AriaRole.BUTTON);
            field.selectOption("TT");
            workbench.limitFiles(FULL);
            save.click();
            assertThat(earthing.locator(".td-problems")).containsText(SENTENCE);
            assertThat(field).hasValue("TT");
            workbench.limitFiles(ROOM);
            save.click();
            assertThat(earthing).containsText("✓ saved");
            assertThat(earthing.locator(".td-problems")).hasCount(0);
        } finally {
            page.context().close();
        }
    }

    @Test
    void programsAreToldAndWhatWasSavedIsThereAfterAnEndWithoutRoom() {
        Program program = workbench.program();
        HandOfProgram hand = new HandOfProgram(variant);
        hand.open(workbench);
        int before = hand.value(program);
        assertThat(hand.take(Hand.Step.EDIT, 1, before, 40)).isEqualTo(2);
        workbench.limitFiles(FULL);
        for (int i = 0; i < 50; i++) {
            HttpResponse<byte[]> refused = program.post("/api" + site + "/undo", "{\"base\": 2}");
            assertThat(refused.statusCode()).isEqualTo(503);
            String sentence = new JsonMapper()
                    .readTree(Program.text(refused))
                    .at("/problems/0/sentence")
                    .asString();
            assertThat(sentence).startsWith(SENTENCE).endsWith("all that was saved before is there.");
        }
        assertThat(hand.value(program)).isEqualTo(40);
        workbench.stop();
        workbench.waited();
        ServerStopTest.assertQuiet(workbench);
        try (Store store = Store.open(folder.resolve("data"), FieldTable.load())) {
            store.verify();
            assertThat(store.sites().revisions(variant)).hasSize(2);
            assertThat(store.sites()
                            .at(new RevisionId(variant, 2))
                            .revision()
                            .edits()
                            .get(0)
                            .after())
                    .isEqualTo("40");
        }
    }

    /** A site of which hardly anything is known. */
    private String newSite() {
        return workbench
                .visitor()
                .post("/sites", "designation", "Larch lane 4", "country", "DE", "lines", "THREE", "mainFuse", "35")
                .headers()
                .firstValue("Location")
                .orElseThrow()
                .replaceAll("^(/sites/[0-9a-f]+).*", "$1");
    }

    private List<String> facts() {
        String answer = Program.text(
                workbench.program().get("/api" + site + "/facts?path=oven.cable.lengthM&path=oven.load.powerW"));
        return new JsonMapper()
                .readTree(answer)
                .path("facts")
                .valueStream()
                .map(fact -> fact.path("value").asString())
                .toList();
    }

    private static void again(Locator place) {
        place.getByRole(AriaRole.BUTTON).click();
    }

    /** Nothing is on its way any more. */
    private static void answered(Page page) {
        assertThat(page.locator("#sheet")).not().hasAttribute("aria-busy", "true");
    }

    private static Locator cell(Page page, String circuit, String field) {
        return page.locator("[data-circuit='%s'] [data-path$='.%s.%s']".formatted(circuit, circuit, field));
    }

    private static void type(Page page, Locator cell, String text) {
        cell.click();
        page.keyboard().type(text);
        page.keyboard().press("Enter");
    }
}
