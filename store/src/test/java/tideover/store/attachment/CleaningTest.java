package tideover.store.attachment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import javax.imageio.ImageWriteParam;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures lose what a camera hides in them and not one pixel; only which way up they are stays. */
class CleaningTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6, 8})
    void aJpegLosesEverythingButThePictureAndItsOrientation(int orientation) throws DamagedFile {
        byte[] photo = Photos.jpeg(orientation);
        byte[] cleaned = JpegCleaner.clean(photo);
        assertThat(text(photo)).contains(Photos.SECRET, "Cam");
        assertThat(text(cleaned)).doesNotContain(Photos.SECRET, "Cam", "http:", "Caption", "MPF");
        assertThat(text(cleaned)).contains("ICC_PROFILE");
        assertSamePixels(cleaned, photo);
        assertThat(text(cleaned).contains("Exif")).isEqualTo(orientation != 1);
        if (orientation != 1) assertThat(Orientation.of(exifOf(cleaned))).isEqualTo(orientation);
        assertThat(JpegCleaner.clean(cleaned)).isEqualTo(cleaned);
    }

    @Test
    void aPhotoThatIsRefinedInSeveralScansStaysWhole() throws DamagedFile {
        byte[] photo = Photos.progressiveJpeg(6);
        byte[] cleaned = JpegCleaner.clean(photo);
        assertThat(scans(cleaned)).isGreaterThan(1);
        assertThat(text(cleaned)).doesNotContain(Photos.SECRET);
        assertSamePixels(cleaned, photo);
    }

    @Test
    void theThumbnailInTheHeaderOfAJpegGoes() throws DamagedFile {
        byte[] plain = Photos.plainJpeg(ImageWriteParam.MODE_DISABLED);
        assertThat(text(plain)).startsWith("\u00FF\u00D8\u00FF\u00E0\0\u0010JFIF");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE0, 0, 16 + 12});
        out.write(plain, 6, 12);
        out.writeBytes(new byte[] {2, 2});
        out.writeBytes(Photos.SECRET.getBytes(StandardCharsets.US_ASCII));
        out.write(plain, 20, plain.length - 20);
        assertThat(JpegCleaner.clean(out.toByteArray())).isEqualTo(plain);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6, 8})
    void aPngLosesEverythingButThePictureAndItsOrientation(int orientation) throws DamagedFile {
        byte[] photo = Photos.png(orientation);
        byte[] cleaned = PngCleaner.clean(photo);
        assertThat(text(photo)).contains(Photos.SECRET, "Cam");
        assertThat(text(cleaned)).doesNotContain(Photos.SECRET, "Cam", "tEXt", "iTXt", "tIME", "prVt");
        if (orientation == 1) assertThat(cleaned).isEqualTo(Photos.plainPng());
        else assertThat(text(cleaned)).contains("eXIf" + text(Orientation.exif(orientation)));
        assertSamePixels(cleaned, photo);
        assertThat(PngCleaner.clean(cleaned)).isEqualTo(cleaned);
    }

    @Test
    void aWebpLosesEverythingButThePictureAndItsOrientation() throws DamagedFile {
        ByteArrayOutputStream turned = new ByteArrayOutputStream();
        Photos.riffChunk("VP8X", new byte[] {0x08, 0, 0, 0, 0, 0, 0, 0, 0, 0}, turned);
        Photos.riffChunk("VP8L", Photos.webpPicture(), turned);
        Photos.riffChunk("EXIF", Orientation.exif(6), turned);
        assertThat(WebpCleaner.clean(Photos.webp(6))).isEqualTo(Photos.riff(turned, ""));
        assertThat(WebpCleaner.clean(Photos.riff(turned, ""))).isEqualTo(Photos.riff(turned, ""));

        ByteArrayOutputStream upright = new ByteArrayOutputStream();
        Photos.riffChunk("VP8X", new byte[10], upright);
        Photos.riffChunk("VP8L", Photos.webpPicture(), upright);
        assertThat(WebpCleaner.clean(Photos.webp(1))).isEqualTo(Photos.riff(upright, ""));
    }

    @Test
    void theFramesOfAMovingWebpAreCleanedToo() throws DamagedFile {
        ByteArrayOutputStream frame = new ByteArrayOutputStream();
        frame.writeBytes(new byte[16]);
        Photos.riffChunk("VP8L", Photos.webpPicture(), frame);
        ByteArrayOutputStream clean = new ByteArrayOutputStream();
        Photos.riffChunk("VP8X", new byte[] {0x02, 0, 0, 0, 0, 0, 0, 0, 0, 0}, clean);
        Photos.riffChunk("ANMF", frame.toByteArray(), clean);
        Photos.riffChunk("prvt", Photos.SECRET.getBytes(StandardCharsets.US_ASCII), frame);
        ByteArrayOutputStream dirty = new ByteArrayOutputStream();
        Photos.riffChunk("VP8X", new byte[] {0x02, 0, 0, 0, 0, 0, 0, 0, 0, 0}, dirty);
        Photos.riffChunk("ANMF", frame.toByteArray(), dirty);
        assertThat(WebpCleaner.clean(Photos.riff(dirty, ""))).isEqualTo(Photos.riff(clean, ""));
    }

    @Test
    void aPictureCutShortIsDamagedWhereverItEnds() {
        byte[] jpeg = Photos.plainJpeg(ImageWriteParam.MODE_DISABLED);
        byte[] png = Photos.plainPng();
        ByteArrayOutputStream chunks = new ByteArrayOutputStream();
        Photos.riffChunk("VP8L", Photos.webpPicture(), chunks);
        byte[] webp = Photos.riff(chunks, "");
        for (int length = 12; length < jpeg.length; length += 7) {
            byte[] cut = Arrays.copyOf(jpeg, length);
            assertThatThrownBy(() -> JpegCleaner.clean(cut)).isInstanceOf(DamagedFile.class);
        }
        for (int length = 12; length < png.length; length += 7) {
            byte[] cut = Arrays.copyOf(png, length);
            assertThatThrownBy(() -> PngCleaner.clean(cut)).isInstanceOf(DamagedFile.class);
        }
        for (int length = 12; length < webp.length; length++) {
            byte[] cut = Arrays.copyOf(webp, length);
            assertThatThrownBy(() -> WebpCleaner.clean(cut)).isInstanceOf(DamagedFile.class);
        }
    }

    @Test
    void aPngAlteredOnTheWayIsDamaged() {
        byte[] png = Photos.plainPng();
        png[png.length / 2] ^= 1;
        assertThatThrownBy(() -> PngCleaner.clean(png)).isInstanceOf(DamagedFile.class);
    }

    @Test
    void anOrientationThatCannotBeReadIsUpright() {
        byte[] exif = Orientation.exif(6);
        for (int length = 0; length < exif.length - 6; length++)
            assertThat(Orientation.of(Arrays.copyOf(exif, length))).isEqualTo(Orientation.UPRIGHT);
        assertThat(Orientation.of(Orientation.exif(9))).isEqualTo(Orientation.UPRIGHT);
        assertThat(Orientation.of(exif)).isEqualTo(6);
    }

    private static void assertSamePixels(byte[] cleaned, byte[] photo) {
        BufferedImage was = Photos.decoded(photo);
        BufferedImage is = Photos.decoded(cleaned);
        assertThat(is.getWidth()).isEqualTo(was.getWidth());
        assertThat(is.getRGB(0, 0, 48, 32, null, 0, 48)).isEqualTo(was.getRGB(0, 0, 48, 32, null, 0, 48));
    }

    private static byte[] exifOf(byte[] jpeg) {
        int at = text(jpeg).indexOf("Exif");
        return Arrays.copyOfRange(jpeg, at, jpeg.length);
    }

    private static int scans(byte[] jpeg) {
        return text(jpeg).split("\u00FF\u00DA", -1).length - 1;
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
