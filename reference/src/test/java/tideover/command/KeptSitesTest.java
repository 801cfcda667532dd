package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Commands on kept sites: the same words and answers whether a workbench holds the data folder or nobody does. */
@Tag("slow")
class KeptSitesTest extends KeptTrial {
    private static final Pattern LENGTH = Pattern.compile("id: bath-sockets[\\s\\S]*?lengthM: ([0-9.]+)");

    private String length(Owner owner, String site) {
        assertThat(run(owner, "export", site)).isZero();
        Matcher length = LENGTH.matcher(out.toString());
        return length.find() ? length.group(1) : "none";
    }

    @ParameterizedTest
    @EnumSource
    void aSiteFileIsKeptFoundAndWrittenAgainWithoutLoss(Owner owner) throws IOException {
        String site = importTownHouse(owner);
        assertThat(run(owner, "sites", "amselweg")).isZero();
        assertThat(out.toString()).contains(site + "  Amselweg 11 · As planned · revision 1");

        Path yaml = folders.resolve(owner + ".yaml");
        assertThat(run(owner, "export", site, "-o", yaml)).isZero();
        assertThat(run(owner, "import", yaml, "--name", "Again")).isZero();
        String again = out.toString().substring(0, 16);
        Path first = folders.resolve(owner + "-1.json");
        Path second = folders.resolve(owner + "-2.json");
        run(owner, "export", site, "-o", first);
        run(owner, "export", again, "-o", second);
        assertThat(second).hasSameBinaryContentAs(first);
    }

    @ParameterizedTest
    @EnumSource
    void factsAreTypedAsInACellAndTakenBackAgain(Owner owner) {
        String site = importTownHouse(owner);
        String before = length(owner, site);
        assertThat(run(
                        owner,
                        "edit",
                        site,
                        "bath-sockets.cable.lengthM=23.5 m",
                        "oven.protection=C 16",
                        "--note",
                        "tape"))
                .isZero();
        assertThat(out.toString()).contains("Saved as revision 2.").containsPattern("(Not met|Met|Open)");
        assertThat(length(owner, site)).isEqualTo("23.5");

        assertThat(run(owner, "history", site)).isZero();
        assertThat(out.toString())
                .containsSubsequence("1  ", "brought from a file", "2  ", "changed", "tape")
                .contains("bath-sockets.cable.lengthM: " + before + " → 23.5", "oven.protection.curve: B → C");

        assertThat(run(owner, "undo", site)).isZero();
        assertThat(length(owner, site)).isEqualTo(before);
        assertThat(run(owner, "redo", site)).isZero();
        assertThat(length(owner, site)).isEqualTo("23.5");
        assertThat(run(owner, "history", site, "--from", "1")).isZero();
        assertThat(out.toString().lines()).hasSize(2);
    }

    @ParameterizedTest
    @EnumSource
    void whatCannotBeIsRefusedAllAtOnceAndNothingIsSaved(Owner owner) {
        String site = importTownHouse(owner);
        assertThat(run(owner, "edit", site, "bath-sockets.cable.lengthM=long", "oven.protection.curve=Q", "oven"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("long", "Q", "oven is no change").doesNotContain("Exception");
        assertThat(run(owner, "edit", site, "bath-sockets.cable.lengthM=-4")).isEqualTo(2);
        assertThat(err.toString()).contains("-4");
        assertThat(run(owner, "history", site)).isZero();
        assertThat(out.toString().lines()).hasSize(1);
    }

    @ParameterizedTest
    @EnumSource
    void aBadFileIsToldWithLineAndColumn(Owner owner) throws IOException {
        Path bad = folders.resolve("bad.yaml");
        Files.writeString(bad, "format: 1\nhouse:\n  boards:\n    - {id: a, desination: A}\n");
        assertThat(run(owner, "import", bad)).isEqualTo(2);
        assertThat(err.toString()).contains("bad.yaml, line 4, column", "desination");
    }

    @ParameterizedTest
    @EnumSource
    void aNameThatIsNobodysOrSeveralPeoplesIsTold(Owner owner) {
        assertThat(run(owner, "export", "Nowhere 7")).isEqualTo(2);
        assertThat(err.toString()).contains("Nowhere 7", "tideover sites");
        importTownHouse(owner);
        importTownHouse(owner);
        assertThat(run(owner, "undo", "Amselweg 11")).isEqualTo(2);
        assertThat(err.toString().lines().skip(1)).hasSizeGreaterThanOrEqualTo(2);
    }

    @ParameterizedTest
    @EnumSource
    void aBackupHoldsEverythingAndComesBack(Owner owner) throws IOException {
        String site = importTownHouse(owner);
        Path backup = folders.resolve(owner + ".backup");
        assertThat(run(owner, "backup", backup)).isZero();
        assertThat(Files.getPosixFilePermissions(backup)).isEqualTo(PosixFilePermissions.fromString("rw-------"));
        assertThat(run(owner, "backup", backup)).as("never over another file").isEqualTo(2);
        assertThat(run(owner, "backup", folders.resolve("nowhere/x"))).isEqualTo(2);
        assertThat(err.toString()).contains("nowhere");

        run(owner, "edit", site, "bath-sockets.cable.lengthM=99");
        if (owner == Owner.WORKBENCH) {
            assertThat(run(owner, "restore", backup))
                    .as("not under a workbench that runs")
                    .isEqualTo(2);
            assertThat(length(owner, site)).isEqualTo("99");
        } else {
            assertThat(run(owner, "restore", backup)).isZero();
            assertThat(length(owner, site)).isNotEqualTo("99");
            assertThat(run(owner, "restore", EXAMPLES.resolve("town-house.yaml")))
                    .isEqualTo(2);
            assertThat(length(owner, site)).isNotEqualTo("99");
        }
    }

    @ParameterizedTest
    @EnumSource
    void aCustomerIsForgottenByWholeNameOnly(Owner owner) {
        assertThat(run(owner, "forget", "Beispiel")).isEqualTo(2);
        assertThat(err.toString()).contains("Ada Beispiel", "Ada Beispielhaft");
        assertThat(run(owner, "forget", "ada beispiel")).isZero();
        assertThat(out.toString()).contains("erased");
        assertThat(run(owner, "forget", "ada beispiel")).isEqualTo(2);
        assertThat(err.toString()).contains("Ada Beispielhaft").doesNotContain("Ada Beispiel ·");
    }

    @ParameterizedTest
    @EnumSource
    void fiveAnswersBecomeAKeptSiteWhoseSurveyIsTold(Owner owner) {
        assertThat(run(
                        owner,
                        "begin",
                        "--designation=Finkenweg 2",
                        "--country=AT",
                        "--earthing=unknown",
                        "--lines=3",
                        "--main-fuse=35",
                        "--pv=none",
                        "--battery=10",
                        "--inverter=10",
                        "--loads=usual",
                        "--stay-on=usual",
                        "--keep"))
                .as(err.toString())
                .isZero();
        String site = out.toString().substring(0, 16);
        assertThat(out.toString())
                .contains("Finkenweg 2 · As planned · revision 1", "tideover survey " + site)
                .doesNotContain("format:");
        assertThat(run(owner, "survey", site)).isZero();
        assertThat(out.toString()).startsWith("Finkenweg 2").contains("supply.earthingSystem");
        assertThat(run(
                        owner,
                        "edit",
                        site,
                        "supply.earthingSystem=TT",
                        "evidence.supply.earthingSystem={origin: READ}"))
                .as(err.toString())
                .isZero();
        assertThat(run(owner, "survey", "Finkenweg 2")).isZero();
        assertThat(out.toString()).doesNotContain("supply.earthingSystem");

        assertThat(run(owner, "survey", "Finkenweg 99")).isEqualTo(2);
        assertThat(err.toString()).contains("No kept site is called Finkenweg 99");
        assertThat(run(owner, "begin", "--keep")).isEqualTo(2);
        assertThat(run(owner, "sites", "finkenweg")).isZero();
        assertThat(out.toString().lines()).hasSize(1);
    }
}
