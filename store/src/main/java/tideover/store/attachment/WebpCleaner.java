package tideover.store.attachment;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/**
 * Keeps of a WebP file the chunks that make the picture, and which way up it is. Exif, XMP, unknown chunks and what hangs
 * behind the end go.
 */
final class WebpCleaner {
    private static final String EXTENDED = "VP8X";
    private static final String FRAME = "ANMF";
    private static final String EXIF = "EXIF";
    private static final Set<String> KEPT = Set.of("VP8 ", "VP8L", EXTENDED, "ALPH", "ANIM", FRAME, "ICCP");
    private static final Set<String> PICTURE = Set.of("VP8 ", "VP8L", FRAME);
    /** Position, size, duration and flags of a frame; its chunks follow. */
    private static final int FRAME_HEADER = 16;

    private static final int HAS_EXIF = 0x08;
    private static final int HAS_XMP = 0x04;
    /** Reserved bits stay as they are. */
    private static final int NEITHER = ~(HAS_EXIF | HAS_XMP);

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private int orientation = Orientation.UPRIGHT;
    private boolean hasPicture;
    private int flagsAt = -1;

    private WebpCleaner() {}

    static byte[] clean(byte[] bytes) throws DamagedFile {
        ByteSource head = new ByteSource(bytes);
        head.name();
        int size = head.i32Reversed();
        head.name();
        if (size < 4 || size - 4 > head.left()) throw new DamagedFile("ends early");
        WebpCleaner cleaner = new WebpCleaner();
        cleaner.chunks(new ByteSource(bytes, 12, 8 + size));
        return cleaner.written();
    }

    private void chunks(ByteSource in) throws DamagedFile {
        while (in.left() > 0) {
            String name = in.name();
            int length = in.i32Reversed();
            byte[] data = in.take(length);
            // Chunks begin at even places; the last one of a file is not always filled up.
            if (length % 2 != 0 && in.left() > 0) in.u8();
            if (name.equals(EXIF)) orientation = Orientation.of(data);
            if (!KEPT.contains(name)) continue;
            hasPicture |= PICTURE.contains(name);
            if (name.equals(EXTENDED)) {
                if (data.length < 10) throw new DamagedFile("a short header");
                flagsAt = out.size() + 8;
                data[0] &= (byte) NEITHER;
            }
            chunk(name, name.equals(FRAME) ? frame(data) : data);
        }
    }

    private static byte[] frame(byte[] data) throws DamagedFile {
        ByteSource in = new ByteSource(data);
        WebpCleaner inner = new WebpCleaner();
        inner.out.writeBytes(in.take(FRAME_HEADER));
        inner.chunks(in);
        return inner.out.toByteArray();
    }

    private void chunk(String name, byte[] data) {
        out.writeBytes(name.getBytes(StandardCharsets.ISO_8859_1));
        i32Reversed(data.length);
        out.writeBytes(data);
        if (data.length % 2 != 0) out.write(0);
    }

    private byte[] written() throws DamagedFile {
        if (!hasPicture) throw new DamagedFile("no picture");
        // Only the extended form has a place for it.
        boolean turned = orientation != Orientation.UPRIGHT && flagsAt >= 0;
        if (turned) chunk(EXIF, Orientation.exif(orientation));
        byte[] chunks = out.toByteArray();
        if (turned) chunks[flagsAt] |= HAS_EXIF;
        WebpCleaner file = new WebpCleaner();
        file.out.writeBytes("RIFF".getBytes(StandardCharsets.ISO_8859_1));
        file.i32Reversed(chunks.length + 4);
        file.out.writeBytes("WEBP".getBytes(StandardCharsets.ISO_8859_1));
        file.out.writeBytes(chunks);
        return file.out.toByteArray();
    }

    private void i32Reversed(int value) {
        for (int shift = 0; shift < 32; shift += 8) out.write(value >> shift);
    }
}
