package tideover.web.customers;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import tideover.store.customer.Customer;
import tideover.store.customer.CustomerId;
import tideover.web.trial.BrowserTest;
import tideover.web.trial.Screen;

/** Customers, in a real browser over a real store; the people are invented. */
@Tag("slow")
class CustomersTest extends BrowserTest {
    private String site = "";

    @BeforeEach
    void farmhouse() {
        site = desk.importExample("farmhouse.yaml");
    }

    @Test
    void aCustomerIsAddedInTheFolderOfASiteAndFoundWithIt() {
        Page page = add("Ada Beispiel");
        page.getByLabel("Town").fill("Probstadt");
        contact(page, 0, "Name").fill("Karl Hausmeister");
        contact(page, 0, "Role").fill("caretaker");
        press(page, "Save");
        assertThat(contact(page, 0, "Name")).hasValue("Karl Hausmeister");
        // A further empty row is there for the next one.
        assertThat(page.locator(".td-contact")).hasCount(2);
        assertOpenToAll(page);
        Customer kept = customer(page);
        assertThat(kept.facts().town()).isEqualTo("Probstadt");
        assertThat(kept.facts().contacts()).hasSize(1);
        open(page, "/?q=beispiel");
        assertThat(page.locator(".td-site__name")).containsText("Erlenhof 3");
        open(page, "/customers?q=probstadt");
        assertThat(page.locator(".td-customer")).containsText("Ada Beispiel");
        assertOpenToAll(page);
        // People stand in no revision and in no file.
        assertThat(desk.visitor().read(site + "/site.json").body()).doesNotContain("Beispiel");
    }

    @Test
    void aContactThatIsEmptiedGoes() {
        Page page = add("Bea Muster");
        contact(page, 0, "Name").fill("Somebody");
        press(page, "Save");
        contact(page, 0, "Name").fill("");
        press(page, "Save");
        assertThat(customer(page).facts().contacts()).isEmpty();
    }

    @Test
    void twoWindowsDoNotOverwriteEachOther() {
        Page one = add("Carl Doppelt");
        Page other = open(page(), one.url().replaceAll("https?://[^/]*", ""));
        one.getByLabel("Street and number").fill("Hauptstr. 1");
        press(one, "Save");
        other.getByLabel("Street and number").fill("Nebenstr. 2");
        press(other, "Save");
        assertThat(other.locator(".td-problems")).containsText("another window");
        assertThat(other.getByLabel("Street and number")).hasValue("Nebenstr. 2");
        assertThat(customer(one).facts().street()).isEqualTo("Hauptstr. 1");
        press(other, "Save");
        assertThat(customer(one).facts().street()).isEqualTo("Nebenstr. 2");
    }

    @Test
    void aCustomerIsForgottenOnlyUnderTheRightNameAndThenAltogether() {
        Page page = add("Dora Vergessen");
        page.getByLabel("Telephone").first().fill("0000 123");
        press(page, "Save");
        page.getByLabel("Write the customer's name to forget them").fill("Dora");
        press(page, "Forget");
        assertThat(page.locator(".td-problems")).containsText("Nobody was forgotten");
        CustomerId id = customer(page).id();
        page.getByLabel("Write the customer's name to forget them").fill("Dora Vergessen");
        press(page, "Forget");
        assertThat(page).hasURL(Pattern.compile("/customers$"));
        assertThat(page.locator("body")).not().containsText("Vergessen");
        Customer kept = desk.store().customers().find(id).orElseThrow();
        assertThat(kept.forgottenAt()).isNotNull();
        assertThat(kept.facts().phone()).isEmpty();
        open(page, site + "/folder");
        assertThat(page.locator("body")).containsText("forgotten");
        assertThat(page.locator("body")).not().containsText("Dora");
        open(page, "/customers/" + id);
        assertThat(page.locator("main")).containsText("was erased");
    }

    @Test
    void aSiteIsLinkedToAKnownCustomerWithoutScript() {
        add("Emil Nachbar");
        String other = desk.importExample("terrace.yaml");
        Page page = open(pageWithoutScript(Screen.PHONE), other + "/folder");
        page.getByLabel("A customer who is known").selectOption("Emil Nachbar");
        press(page, "Say whose it is");
        assertThat(page.locator("main")).containsText("Emil Nachbar");
        page.getByLabel("Emil Nachbar is no longer the customer").click();
        assertThat(page.locator("main ul a", new Page.LocatorOptions().setHasText("Emil Nachbar")))
                .hasCount(0);
    }

    private Page add(String name) {
        Page page = open(page(), site + "/folder");
        page.getByLabel("A new customer: name").fill(name);
        press(page, "Add");
        assertThat(page).hasURL(Pattern.compile("/customers/[0-9a-f]{16}$"));
        return page;
    }

    private static com.microsoft.playwright.Locator contact(Page page, int nth, String label) {
        return page.locator(".td-contact").nth(nth).getByLabel(label);
    }

    private static Customer customer(Page page) {
        String id = page.url().replaceAll(".*/customers/([0-9a-f]{16}).*", "$1");
        return desk.store().customers().find(new CustomerId(id)).orElseThrow();
    }

    private static void press(Page page, String button) {
        page.getByRole(
                        AriaRole.BUTTON,
                        new Page.GetByRoleOptions().setName(button).setExact(true))
                .click();
    }
}
