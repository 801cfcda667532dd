package tideover.store.attachment;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * Keeps of a PNG file the chunks that make the picture, and which way up it is. Texts, times, Exif, chunks of programs and
 * what hangs behind the end go.
 */
final class PngCleaner {
    private static final int SIGNATURE_LENGTH = 8;
    private static final String EXIF = "eXIf";
    private static final Set<String> KEPT = Set.of(
            "IHDR", "PLTE", "IDAT", "IEND", "tRNS", "cHRM", "gAMA", "iCCP", "sBIT", "sRGB", "cICP", "mDCV", "cLLI",
            "bKGD", "hIST", "pHYs", "acTL", "fcTL", "fdAT");

    private PngCleaner() {}

    /** One chunk. */
    private static final class Chunk {
        private final String name;
        private final byte[] data;

        Chunk(String name, byte[] data) {
            this.name = name;
            this.data = data;
        }

        int sum() {
            CRC32 sum = new CRC32();
            sum.update(name.getBytes(StandardCharsets.ISO_8859_1));
            sum.update(data);
            return (int) sum.getValue();
        }
    }

    static byte[] clean(byte[] bytes) throws DamagedFile {
        ByteSource in = new ByteSource(bytes);
        byte[] signature = in.take(SIGNATURE_LENGTH);
        List<Chunk> kept = new ArrayList<>();
        Chunk exif = null;
        Chunk chunk;
        do {
            chunk = read(in);
            if (kept.isEmpty() && !chunk.name.equals("IHDR")) throw new DamagedFile("begins with " + chunk.name);
            if (KEPT.contains(chunk.name)) kept.add(chunk);
            else if (chunk.name.equals(EXIF)) exif = chunk;
        } while (!chunk.name.equals("IEND"));
        if (kept.stream().noneMatch(found -> found.name.equals("IDAT"))) throw new DamagedFile("no picture");
        int orientation = exif == null ? Orientation.UPRIGHT : Orientation.of(exif.data);
        if (orientation != Orientation.UPRIGHT) kept.add(1, new Chunk(EXIF, Orientation.exif(orientation)));

        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length);
        out.writeBytes(signature);
        for (Chunk found : kept) {
            i32(found.data.length, out);
            out.writeBytes(found.name.getBytes(StandardCharsets.ISO_8859_1));
            out.writeBytes(found.data);
            i32(found.sum(), out);
        }
        return out.toByteArray();
    }

    private static Chunk read(ByteSource in) throws DamagedFile {
        int length = in.i32();
        Chunk chunk = new Chunk(in.name(), in.take(length));
        if (in.i32() != chunk.sum()) throw new DamagedFile(chunk.name + " was altered on the way");
        return chunk;
    }

    private static void i32(int value, ByteArrayOutputStream out) {
        for (int shift = 24; shift >= 0; shift -= 8) out.write(value >> shift);
    }
}
