package tideover.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class EditedSitesTest {

    @TempDir
    Path folder;

    @Test
    void noRoundSeesAnInputThatAnEarlierOneSaw() throws IOException {
        EditedSites sites = EditedSites.of(file("a: {lengthM: 12}\nb: {lengthM: 7.5}\n"));
        var texts = IntStream.range(0, 1000).mapToObj(sites::text).toList();
        assertThat(texts).doesNotHaveDuplicates();
    }

    @Test
    void anEditMakesOneCableALittleLonger() throws IOException {
        EditedSites sites = EditedSites.of(file("a: {lengthM: 12}\nb: {lengthM: 7.5, sectionMm2: 2.5}\n"));
        assertThat(sites.text(1)).isEqualTo("a: {lengthM: 12}\nb: {lengthM: 7.5100, sectionMm2: 2.5}\n");
        assertThat(sites.text(2)).isEqualTo("a: {lengthM: 12.0200}\nb: {lengthM: 7.5, sectionMm2: 2.5}\n");
    }

    @Test
    void aSiteWithoutCablesIsRefused() throws IOException {
        Path file = file("format: 1\n");
        assertThatThrownBy(() -> EditedSites.of(file)).hasMessageContaining("lengthM");
    }

    @Test
    void aVariantIsRefusedBecauseItsBaseWouldBeMissing() throws IOException {
        Path file = file("variantOf: town-house.yaml\nset: {a.cable.lengthM: 3}\nadd: {lengthM: 3}\n");
        assertThatThrownBy(() -> EditedSites.of(file)).hasMessageContaining("variant");
    }

    private Path file(String text) throws IOException {
        return Files.writeString(folder.resolve("site.yaml"), text);
    }
}
