package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Customers on the command line: the same whether a workbench holds the data folder or nobody does. */
@Tag("slow")
class KeptCustomersTest extends KeptTrial {

    /** Keeps a customer. @return the lasting name */
    private String add(Owner owner, String name, String... facts) {
        Object[] words = new Object[facts.length + 3];
        words[0] = "customers";
        words[1] = "--add";
        words[2] = name;
        System.arraycopy(facts, 0, words, 3, facts.length);
        assertThat(run(owner, words)).as(err.toString()).isZero();
        return out.toString().substring(0, 16);
    }

    @ParameterizedTest
    @EnumSource
    void aCustomerIsAddedFoundAndShownWithAllThatIsKnown(Owner owner) {
        String customer = add(
                owner,
                "Berta Muster",
                "--street=Am Bach 4",
                "--town=Neustadt",
                "--phone=+49 1 234",
                "--note=rings twice; dog",
                "--contact=caretaker;Carl Muster;+49 5;carl@example.org",
                "--contact=neighbour;Doris");
        assertThat(run(owner, "customers", "neustadt", "berta")).isZero();
        assertThat(out.toString().strip()).isEqualTo(customer + "  Berta Muster · Neustadt");
        assertThat(run(owner, "customers", "--show", "berta muster")).isZero();
        assertThat(out.toString())
                .contains(
                        "Street and number: Am Bach 4",
                        "Telephone: +49 1 234",
                        "Note: rings twice; dog",
                        "Whom to call: caretaker · Carl Muster · +49 5 · carl@example.org",
                        "Whom to call: neighbour · Doris")
                .doesNotContain("E-mail");
        assertThat(run(owner, "customers", "nobody", "so", "called")).isZero();
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString()).contains("No customer fits");
    }

    @ParameterizedTest
    @EnumSource
    void whatIsNotGivenStaysAndWhatIsGivenEmptyIsForgotten(Owner owner) {
        String customer = add(owner, "Emil Muster", "--street=Am Bach 5", "--phone=+49 9", "--contact=heir;Frida");
        assertThat(run(
                        owner,
                        "customers",
                        "--change",
                        customer,
                        "--name=Emil Mustermann",
                        "--phone=",
                        "--mail=e@example.org"))
                .as(err.toString())
                .isZero();
        assertThat(run(owner, "customers", "--show", customer)).isZero();
        assertThat(out.toString())
                .contains("Emil Mustermann", "Am Bach 5", "e@example.org", "heir · Frida")
                .doesNotContain("+49 9");
        assertThat(run(owner, "customers", "--change", customer, "--name= ")).isEqualTo(2);
        assertThat(err.toString()).contains("Name: write one").doesNotContain("Exception");
        assertThat(run(owner, "customers", "--add", "", "--town=Neustadt")).isEqualTo(2);
        assertThat(run(owner, "customers", "--change", "Emil", "--town=x"))
                .as("a part of a name")
                .isEqualTo(2);
        assertThat(err.toString()).contains("Emil Mustermann");
    }

    @ParameterizedTest
    @EnumSource
    void itIsSaidAndToldWhichSiteIsWhose(Owner owner) {
        String site = importTownHouse(owner);
        String other = importTownHouse(owner);
        String customer = add(owner, "Gerd Muster", "--site=" + site);
        assertThat(out.toString()).contains("Amselweg 11 is the site of Gerd Muster.");
        String second = add(owner, "Hanna Muster");
        assertThat(run(owner, "customers", "--link", "Hanna Muster", "--site", site))
                .isZero();
        assertThat(run(owner, "customers", "--site", site)).isZero();
        assertThat(out.toString().lines()).hasSize(2);
        assertThat(out.toString()).contains(customer, second);
        assertThat(run(owner, "customers", "--show", customer)).isZero();
        assertThat(out.toString()).contains("Site: " + site).doesNotContain(other);
        assertThat(run(owner, "sites", "gerd")).isZero();
        assertThat(out.toString()).startsWith(site);

        assertThat(run(owner, "customers", "--unlink", customer, "--site", site))
                .isZero();
        assertThat(run(owner, "customers", "--unlink", customer, "--site", site))
                .isEqualTo(2);
        assertThat(err.toString()).contains("Amselweg 11 is not the site of Gerd Muster");
        assertThat(run(owner, "customers", "--site", other)).isZero();
        assertThat(err.toString()).contains("nobody's yet");
    }

    @ParameterizedTest
    @EnumSource
    void aForgottenCustomerIsTakenFromTheSiteByLastingName(Owner owner) {
        String site = importTownHouse(owner);
        String customer = add(owner, "Ines Muster", "--site=" + site);
        assertThat(run(owner, "forget", "Ines Muster")).isZero();
        assertThat(run(owner, "customers", "--site", site)).isZero();
        assertThat(out.toString()).contains(customer, "forgotten").doesNotContain("Ines");
        assertThat(run(owner, "customers", "--unlink", customer, "--site", site))
                .isZero();
        assertThat(run(owner, "customers", "--change", customer, "--name=Back")).isEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource
    void whatDoesNotGoTogetherIsToldAllAtOnceAndNothingIsKept(Owner owner) {
        assertThat(run(owner, "customers", "--add=Jakob Muster", "--link=x", "--contact=a;b;c;d;e"))
                .isEqualTo(2);
        assertThat(err.toString())
                .contains("One at a time", "give it with --site")
                .doesNotContain("Exception");
        assertThat(run(owner, "customers", "--town=x")).isEqualTo(2);
        assertThat(err.toString()).contains("--change CUSTOMER");
        assertThat(run(owner, "customers", "--add=Jakob Muster", "--contact=a;b;c;d;e"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("ROLE;NAME;PHONE;MAIL");
        assertThat(run(owner, "customers", "--add=Jakob Muster", "--site=Nowhere 7"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("Nowhere 7");
        assertThat(run(owner, "customers", "jakob")).isZero();
        assertThat(out.toString()).isEmpty();
    }
}
