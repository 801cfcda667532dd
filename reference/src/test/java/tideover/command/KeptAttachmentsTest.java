package tideover.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Photos and documents on the command line: the same whether a workbench holds the data folder or nobody does. */
@Tag("slow")
class KeptAttachmentsTest extends KeptTrial {
    /** The smallest picture there is: one grey point. */
    private static final byte[] PICTURE = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAAAAAA6fptVAAAACklEQVR4nGNoAAAAggCBd81ytgAAAABJRU5ErkJggg==");

    @TempDir
    private Path desk;

    private Path picture(String name) throws IOException {
        return Files.write(desk.resolve(name), PICTURE);
    }

    @ParameterizedTest
    @EnumSource
    void aPhotoIsKeptAtAThingToldAndWrittenOutAsItWas(Owner owner) throws IOException {
        String site = importTownHouse(owner);
        assertThat(run(owner, "attachments", site)).isZero();
        assertThat(err.toString()).contains("no photos or documents here yet");

        assertThat(run(owner, "attachments", site, "--add", picture("board.png"), "--at=main-board", "--note=lid off"))
                .as(err.toString())
                .isZero();
        String board = out.toString().substring(0, 16);
        assertThat(run(
                        owner,
                        "attachments",
                        site,
                        "--add",
                        picture("oven.png"),
                        "--at=oven.cable.lengthM",
                        "--personal"))
                .isZero();
        assertThat(run(owner, "attachments", site, "--add", picture("street.png")))
                .isZero();

        assertThat(run(owner, "attachments", site)).isZero();
        assertThat(out.toString().lines()).hasSize(3);
        assertThat(out.toString())
                .contains(board + "  board.png · ", "(main-board)", "1 kB", "lid off")
                .contains("(oven.cable.lengthM)", "personal", "street.png · the site as a whole");
        assertThat(run(owner, "attachments", site, "--at", "oven")).isZero();
        assertThat(out.toString()).contains("oven.png").doesNotContain("board.png");

        assertThat(run(owner, "attachments", site, "--write", "board.png", "-o", desk.resolve("copy.png")))
                .isZero();
        assertThat(desk.resolve("copy.png")).hasBinaryContent(PICTURE);
        Path folder = Files.createDirectory(desk.resolve("photos"));
        assertThat(run(owner, "attachments", site, "--write", board, "-o", folder))
                .isZero();
        assertThat(folder.resolve("board.png")).hasBinaryContent(PICTURE);
        Files.writeString(folder.resolve("board.png"), "mine");
        assertThat(run(owner, "attachments", site, "--write", board, "-o", folder))
                .isEqualTo(2);
        assertThat(folder.resolve("board.png")).hasContent("mine");

        assertThat(run(owner, "attachments", site, "--remove", "board.png")).isZero();
        assertThat(run(owner, "attachments", site, "--write", board)).isEqualTo(2);
        assertThat(err.toString()).contains(board, "lists what there is");
    }

    @ParameterizedTest
    @EnumSource
    void whatCannotBeKeptIsRefusedInTheWordsOfTheWorkbench(Owner owner) throws IOException {
        String site = importTownHouse(owner);
        Path drawing = Files.writeString(desk.resolve("plan.svg"), "<svg/>", StandardCharsets.UTF_8);
        assertThat(run(owner, "attachments", site, "--add", drawing)).isEqualTo(2);
        assertThat(err.toString())
                .startsWith("plan.svg is neither a photo (JPEG, PNG, WebP) nor a PDF.")
                .doesNotContain("Exception");

        Path large = desk.resolve("large.png");
        try (RandomAccessFile file = new RandomAccessFile(large.toFile(), "rw")) {
            file.write(PICTURE);
            file.setLength(21L << 20);
        }
        assertThat(run(owner, "attachments", site, "--add", large)).isEqualTo(2);
        assertThat(err.toString()).startsWith("large.png is larger than 20 MB.");

        assertThat(run(owner, "attachments", site, "--add", picture("photo.jpg")))
                .isEqualTo(2);
        assertThat(err.toString()).startsWith("photo.jpg ends in .jpg, but its content is PNG.");
        assertThat(run(owner, "attachments", site, "--add", desk.resolve("nowhere.png")))
                .isEqualTo(2);
        assertThat(err.toString()).contains("nowhere.png");
        assertThat(run(owner, "attachments", site)).isZero();
        assertThat(out.toString()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void aPlaceThatTheSiteDoesNotHaveIsToldWithThoseItHas(Owner owner) throws IOException {
        String site = importTownHouse(owner);
        Path photo = picture("board.png");
        for (String place : new String[] {"main-bord", "Main Board", "oven.colour", "oven."}) {
            assertThat(run(owner, "attachments", site, "--add", photo, "--at", place))
                    .as(place)
                    .isEqualTo(2);
            assertThat(err.toString()).contains(place, "main-board", "THING.FIELD");
        }
        assertThat(run(owner, "attachments", site, "--write=a", "--remove=b", "--note=c", "--at=oven"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("One at a time", "go with --add FILE", "--at goes alone");
        assertThat(run(owner, "attachments", site)).isZero();
        assertThat(out.toString()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void ofTwoFilesOfOneNameTheLastingNameIsAskedFor(Owner owner) throws IOException {
        String site = importTownHouse(owner);
        Path photo = picture("board.png");
        run(owner, "attachments", site, "--add", photo);
        run(owner, "attachments", site, "--add", photo, "--at=main-board");
        String second = out.toString().substring(0, 16);
        assertThat(run(owner, "attachments", site, "--remove", "board.png")).isEqualTo(2);
        assertThat(err.toString()).contains("Several", second);
        assertThat(run(owner, "attachments", site, "--remove", second)).isZero();
        assertThat(run(owner, "attachments", site)).isZero();
        assertThat(out.toString().lines()).hasSize(1);
    }
}
