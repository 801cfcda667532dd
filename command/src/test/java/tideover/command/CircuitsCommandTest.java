package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The circuit list, out to a spreadsheet and back (docs/circuits-csv.md). */
class CircuitsCommandTest {

    private static final Path TOWN_HOUSE = Path.of("..", "examples", "town-house.yaml");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder = Path.of("");

    private int run(Object... arguments) {
        String[] texts = new String[arguments.length];
        for (int i = 0; i < arguments.length; i++) texts[i] = arguments[i].toString();
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return new Tideover(new PrintWriter(out, true), new PrintWriter(err, true), () -> LocalDate.EPOCH).run(texts);
    }

    @Test
    void aListChangedInASpreadsheetMakesAnotherSite() throws IOException {
        assertThat(run("circuits", TOWN_HOUSE, "--as", "planned")).isZero();
        String csv = out.toString();
        assertThat(csv.lines()).hasSizeGreaterThan(20);
        assertThat(csv).contains("\r\nsauna,Sauna,");
        Path list = folder.resolve("list.csv");
        Files.writeString(
                list,
                "id;cable.lengthM;designation;fedFrom;conductors\nsauna;11,5;Sauna;rcd-grid;L1-L3 N PE\n"
                        + "well;30;Well pump;rcd-grid;L1 N PE\n");
        Path changed = folder.resolve("changed.yaml");
        assertThat(run("circuits", TOWN_HOUSE, "--as", "planned", "--apply", list, "-o", changed))
                .as(err.toString())
                .isZero();
        assertThat(err.toString()).contains("Circuits added: 1.");
        assertThat(run("circuits", changed, "--as", "planned")).isZero();
        assertThat(out.toString())
                .contains("\r\nsauna,Sauna,", "\r\nwell,Well pump,")
                .contains(",11.5,", ",30,");
        // The file is a sound site, and the list that made it has nothing more to say.
        assertThat(run("circuits", changed, "--as", "planned", "--apply", list)).isZero();
        assertThat(err.toString()).contains("Facts changed: 0. Circuits added: 0.");
        assertThat(out.toString()).isEqualTo(Files.readString(changed));
    }

    @Test
    void aListWithProblemsIsRefusedWithAllOfThemAndNothingIsWritten() throws IOException {
        Path list = folder.resolve("list.csv");
        Files.writeString(list, "id,cable.lengthM,loadpower\nsauna,long,\nsauna,3,\n");
        Path changed = folder.resolve("changed.yaml");
        assertThat(run("circuits", TOWN_HOUSE, "--apply", list, "-o", changed)).isEqualTo(2);
        assertThat(err.toString())
                .contains("list.csv, line 1, column 3: There is no column loadpower.")
                .contains("list.csv, line 2, column 2: length of cable: found long.")
                .contains("list.csv, line 3, column 1: The circuit sauna has a row already, in line 2.");
        assertThat(changed).doesNotExist();
        assertThat(out.toString()).isEmpty();
    }

    @Test
    void aListThatIsNotThereIsNamed() {
        assertThat(run("circuits", TOWN_HOUSE, "--apply", folder.resolve("no.csv")))
                .isEqualTo(2);
        assertThat(err.toString()).contains("There is no file " + folder.resolve("no.csv"));
        assertThat(run("circuits", TOWN_HOUSE, "--apply", folder)).isEqualTo(2);
        assertThat(err.toString()).contains("could not be read");
    }
}
