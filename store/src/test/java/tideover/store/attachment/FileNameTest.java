package tideover.store.attachment;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Names that came from elsewhere. */
class FileNameTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "board.jpg | board.jpg",
                "../../etc/passwd | passwd.jpg",
                "C:\\photos\\Board 1.JPG | Board 1.JPG",
                ".hidden.jpg | hidden.jpg",
                "a<b>\"c\".jpg | abc.jpg",
                "con.jpg | _con.jpg",
                "Zählerschrank Keller.jpeg | Zählerschrank Keller.jpeg",
                "'  ' | attachment.jpg",
                "x.jpg. | x.jpg",
                "--help | help.jpg",
                "tab\there.jpg | tabhere.jpg",
            })
    void aNameIsMadeFitForEveryDisk(String typed, String expected) {
        assertThat(FileName.withExtension(FileName.cleaned(typed), MediaType.JPEG))
                .isEqualTo(expected);
    }

    @Test
    void whatTurnsTheWritingRoundIsLeftOut() {
        assertThat(FileName.cleaned("photo\u202Egpj.exe")).isEqualTo("photogpj.exe");
    }

    @Test
    void aLongNameKeepsItsEnding() {
        String name = FileName.withExtension(FileName.cleaned("🏠".repeat(100) + ".png"), MediaType.PNG);
        assertThat(name).endsWith("🏠.png").hasSizeLessThan(90);
    }
}
