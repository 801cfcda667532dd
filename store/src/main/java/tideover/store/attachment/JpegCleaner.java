package tideover.store.attachment;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Keeps of a JPEG file what makes the picture: tables, frames, scans, colour profile, and which way up it is. Position,
 * camera, names, thumbnails, comments and what hangs behind the end go.
 */
final class JpegCleaner {
    private static final int START = 0xD8;
    private static final int END = 0xD9;
    private static final int SCAN = 0xDA;
    private static final int APP0 = 0xE0;
    private static final int APP1 = 0xE1;
    private static final int APP2 = 0xE2;
    private static final int APP14 = 0xEE;
    private static final int APP15 = 0xEF;
    /** Identifier, version, unit, densities; what follows is a thumbnail. */
    private static final int JFIF_WITHOUT_THUMBNAIL = 12;

    private final byte[] bytes;
    private final ByteSource in;
    private final List<byte[]> kept = new ArrayList<>();
    private int orientation = Orientation.UPRIGHT;
    private int insertAt;
    private boolean scanned;

    private JpegCleaner(byte[] bytes) {
        this.bytes = bytes;
        this.in = new ByteSource(bytes);
    }

    static byte[] clean(byte[] bytes) throws DamagedFile {
        JpegCleaner cleaner = new JpegCleaner(bytes);
        cleaner.read();
        return cleaner.written();
    }

    private void read() throws DamagedFile {
        if (in.u16() != (0xFF00 | START)) throw new DamagedFile("no start of image");
        for (int marker = marker(); marker != END; marker = marker()) {
            if (marker == START || marker == 0) throw new DamagedFile("marker %02X inside".formatted(marker));
            // Restart markers and TEM stand alone.
            if (marker >= 0xD0 && marker < START || marker == 0x01) continue;
            int length = in.u16();
            segment(marker, in.take(length - 2));
            if (marker == SCAN) scan();
        }
        if (!scanned) throw new DamagedFile("no scan");
    }

    private int marker() throws DamagedFile {
        if (in.u8() != 0xFF) throw new DamagedFile("no marker before byte " + in.at());
        int marker = in.u8();
        while (marker == 0xFF) marker = in.u8();
        return marker;
    }

    private void segment(int marker, byte[] data) {
        if (marker == APP0 && begins(data, "JFIF\0") && data.length >= JFIF_WITHOUT_THUMBNAIL) {
            byte[] header = Arrays.copyOf(data, JFIF_WITHOUT_THUMBNAIL + 2);
            header[JFIF_WITHOUT_THUMBNAIL] = 0;
            header[JFIF_WITHOUT_THUMBNAIL + 1] = 0;
            keep(marker, header);
            // It asks to stand first; the orientation comes behind it.
            if (kept.size() == 1) insertAt = 1;
        } else if (marker == APP1 && Orientation.isExif(data)) {
            if (orientation == Orientation.UPRIGHT) orientation = Orientation.of(data);
        } else if (marker == APP2 ? begins(data, "ICC_PROFILE\0") : marker == APP14 && begins(data, "Adobe")) {
            keep(marker, data);
        } else if ((marker < APP0 || marker > APP15) && marker < 0xF0) {
            keep(marker, data);
        }
    }

    /** Coded picture data, up to the next marker that is no restart; a zero byte keeps an FF of the data from being one. */
    private void scan() throws DamagedFile {
        scanned = true;
        int start = in.at();
        int at = start;
        while (true) {
            if (at + 1 >= bytes.length) throw new DamagedFile("no end of image");
            int next = bytes[at + 1] & 0xFF;
            if ((bytes[at] & 0xFF) == 0xFF && next != 0 && next != 0xFF && !(next >= 0xD0 && next <= 0xD7)) break;
            at++;
        }
        kept.add(in.take(at - start));
    }

    private void keep(int marker, byte[] data) {
        int length = data.length + 2;
        byte[] segment = new byte[data.length + 4];
        segment[0] = (byte) 0xFF;
        segment[1] = (byte) marker;
        segment[2] = (byte) (length >> 8);
        segment[3] = (byte) length;
        System.arraycopy(data, 0, segment, 4, data.length);
        kept.add(segment);
    }

    private byte[] written() {
        if (orientation != Orientation.UPRIGHT) {
            keep(APP1, Orientation.prefixedExif(orientation));
            kept.add(insertAt, kept.remove(kept.size() - 1));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream(bytes.length);
        out.write(0xFF);
        out.write(START);
        for (byte[] segment : kept) out.writeBytes(segment);
        out.write(0xFF);
        out.write(END);
        return out.toByteArray();
    }

    private static boolean begins(byte[] data, String text) {
        byte[] wanted = text.getBytes(StandardCharsets.ISO_8859_1);
        return data.length >= wanted.length && Arrays.equals(data, 0, wanted.length, wanted, 0, wanted.length);
    }
}
