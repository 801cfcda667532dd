package tideover.store.attachment;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.zip.CRC32;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/** Pictures made for the tests, with what a camera hides in them; the position reads {@value #SECRET}. */
public final class Photos {
    /** Stands wherever a file can say something beside the picture. */
    public static final String SECRET = "SECRET-PLACE";

    private Photos() {}

    /** A picture in which each place has another colour. */
    private static BufferedImage image() {
        BufferedImage image = new BufferedImage(48, 32, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 48; x++)
            for (int y = 0; y < 32; y++) image.setRGB(x, y, new Color(x * 5, y * 7, (x * y) % 256).getRGB());
        return image;
    }

    /** A photo as cameras write it, with thumbnail, position, comment, and a second picture behind the end. */
    public static byte[] jpeg(int orientation) {
        return jpeg(orientation, ImageWriteParam.MODE_DISABLED);
    }

    static byte[] progressiveJpeg(int orientation) {
        return jpeg(orientation, ImageWriteParam.MODE_DEFAULT);
    }

    private static byte[] jpeg(int orientation, int progressive) {
        byte[] plain = plainJpeg(progressive);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        segment(0xE1, join("Exif\0\0", exif(orientation)), out);
        segment(
                0xE1,
                join("http://ns.example.org/xmp/\0", ("<x>" + SECRET + "</x>").getBytes(StandardCharsets.UTF_8)),
                out);
        segment(0xED, join("Caption 1.0\0", SECRET.getBytes(StandardCharsets.UTF_8)), out);
        segment(0xE2, join("MPF\0", SECRET.getBytes(StandardCharsets.UTF_8)), out);
        segment(0xE2, join("ICC_PROFILE\0", new byte[] {1, 1, 7, 7, 7}), out);
        segment(0xFE, SECRET.getBytes(StandardCharsets.UTF_8), out);
        out.write(plain, 2, plain.length - 2);
        out.writeBytes(SECRET.getBytes(StandardCharsets.UTF_8));
        out.writeBytes(plain);
        return out.toByteArray();
    }

    static byte[] plainJpeg(int progressive) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
            writer.setOutput(stream);
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setProgressiveMode(progressive);
            writer.write(null, new IIOImage(image(), null, null), param);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        return out.toByteArray();
    }

    static byte[] png(int orientation) {
        byte[] plain = plainPng();
        int afterHeader = 8 + 25;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, afterHeader);
        chunk("eXIf", exif(orientation), out);
        chunk("tEXt", join("Comment\0", SECRET.getBytes(StandardCharsets.UTF_8)), out);
        chunk("iTXt", join("XML:org.example.xmp\0\0\0\0\0", SECRET.getBytes(StandardCharsets.UTF_8)), out);
        chunk("tIME", new byte[] {7, (byte) 0xEA, 1, 1, 1, 1, 1}, out);
        chunk("prVt", SECRET.getBytes(StandardCharsets.UTF_8), out);
        out.write(plain, afterHeader, plain.length - afterHeader);
        out.writeBytes(SECRET.getBytes(StandardCharsets.UTF_8));
        return out.toByteArray();
    }

    static byte[] plainPng() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            ImageIO.write(image(), "png", out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    /** The picture data of one red pixel row; there is nothing in the platform that writes WebP. */
    static byte[] webpPicture() {
        byte[] file = Base64.getDecoder().decode("UklGRhoAAABXRUJQVlA4TA0AAAAvAAAAEAcQERGIiP4HAA==");
        byte[] picture = new byte[13];
        System.arraycopy(file, 20, picture, 0, picture.length);
        return picture;
    }

    static byte[] webp(int orientation) {
        ByteArrayOutputStream chunks = new ByteArrayOutputStream();
        riffChunk("VP8X", new byte[] {0x0C, 0, 0, 0, 0, 0, 0, 0, 0, 0}, chunks);
        riffChunk("VP8L", webpPicture(), chunks);
        riffChunk("EXIF", exif(orientation), chunks);
        riffChunk("XMP ", SECRET.getBytes(StandardCharsets.UTF_8), chunks);
        riffChunk("prvt", SECRET.getBytes(StandardCharsets.UTF_8), chunks);
        return riff(chunks, SECRET);
    }

    static byte[] riff(ByteArrayOutputStream chunks, String behind) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes("RIFF".getBytes(StandardCharsets.US_ASCII));
        i32Reversed(chunks.size() + 4, out);
        out.writeBytes("WEBP".getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(chunks.toByteArray());
        out.writeBytes(behind.getBytes(StandardCharsets.UTF_8));
        return out.toByteArray();
    }

    static void riffChunk(String name, byte[] data, ByteArrayOutputStream out) {
        out.writeBytes(name.getBytes(StandardCharsets.US_ASCII));
        i32Reversed(data.length, out);
        out.writeBytes(data);
        if (data.length % 2 != 0) out.write(0);
    }

    static BufferedImage decoded(byte[] picture) {
        try {
            return ImageIO.read(new ByteArrayInputStream(picture));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Least significant byte first, as most cameras write: orientation, and a text in the place of position data. */
    private static byte[] exif(int orientation) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(new byte[] {'I', 'I', 42, 0, 8, 0, 0, 0, 2, 0});
        out.writeBytes(new byte[] {0x0F, 0x01, 2, 0, 4, 0, 0, 0, 'C', 'a', 'm', 0});
        out.writeBytes(new byte[] {0x12, 0x01, 3, 0, 1, 0, 0, 0, (byte) orientation, 0, 0, 0});
        out.writeBytes(new byte[] {0, 0, 0, 0});
        out.writeBytes(SECRET.getBytes(StandardCharsets.UTF_8));
        return out.toByteArray();
    }

    private static void segment(int marker, byte[] data, ByteArrayOutputStream out) {
        out.write(0xFF);
        out.write(marker);
        out.write((data.length + 2) >> 8);
        out.write(data.length + 2);
        out.writeBytes(data);
    }

    private static void chunk(String name, byte[] data, ByteArrayOutputStream out) {
        CRC32 sum = new CRC32();
        sum.update(name.getBytes(StandardCharsets.US_ASCII));
        sum.update(data);
        i32(data.length, out);
        out.writeBytes(name.getBytes(StandardCharsets.US_ASCII));
        out.writeBytes(data);
        i32((int) sum.getValue(), out);
    }

    private static void i32(int value, ByteArrayOutputStream out) {
        for (int shift = 24; shift >= 0; shift -= 8) out.write(value >> shift);
    }

    private static void i32Reversed(int value, ByteArrayOutputStream out) {
        i32(Integer.reverseBytes(value), out);
    }

    private static byte[] join(String head, byte[] tail) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.writeBytes(head.getBytes(StandardCharsets.ISO_8859_1));
        out.writeBytes(tail);
        return out.toByteArray();
    }
}
