package tideover.store.attachment;

import java.util.Arrays;

/** Which way up a picture is meant to be seen: the one thing of Exif that belongs to the picture. */
final class Orientation {
    /** As it is stored. */
    static final int UPRIGHT = 1;

    private static final byte[] PREFIX = {'E', 'x', 'i', 'f', 0, 0};
    private static final int TAG = 0x0112;
    private static final int SHORT = 3;

    private Orientation() {}

    /** Whether a segment holds Exif. */
    static boolean isExif(byte[] segment) {
        return segment.length >= PREFIX.length && Arrays.equals(segment, 0, PREFIX.length, PREFIX, 0, PREFIX.length);
    }

    /**
     * The orientation in Exif data, with or without its prefix.
     *
     * @return 1 to 8; {@link #UPRIGHT} where it is not said, or said in no way that can be read
     */
    static int of(byte[] exif) {
        int start = isExif(exif) ? PREFIX.length : 0;
        try {
            ByteSource head = new ByteSource(exif, start, exif.length);
            boolean reversed = head.u16() == 0x4949;
            head.u16();
            int directory = reversed ? head.i32Reversed() : head.i32();
            if (directory < 8 || directory > exif.length - start) return UPRIGHT;
            ByteSource in = new ByteSource(exif, start + directory, exif.length);
            int count = u16(in, reversed);
            for (int i = 0; i < count; i++) {
                int tag = u16(in, reversed);
                int type = u16(in, reversed);
                in.i32();
                int value = u16(in, reversed);
                in.u16();
                if (tag == TAG && type == SHORT) return value >= 1 && value <= 8 ? value : UPRIGHT;
            }
        } catch (DamagedFile e) {
            // What cannot be read is left out like the rest of it.
        }
        return UPRIGHT;
    }

    private static int u16(ByteSource in, boolean reversed) throws DamagedFile {
        int value = in.u16();
        return reversed ? (value & 0xFF) << 8 | value >> 8 : value;
    }

    /** Exif that says nothing else, without its prefix: one directory of one entry. */
    static byte[] exif(int orientation) {
        return new byte[] {
            'M', 'M', 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, SHORT, 0, 0, 0, 1, 0, (byte) orientation, 0, 0, 0, 0, 0, 0
        };
    }

    /** The same with the prefix that JPEG asks for. */
    static byte[] prefixedExif(int orientation) {
        byte[] exif = exif(orientation);
        byte[] prefixed = Arrays.copyOf(PREFIX, PREFIX.length + exif.length);
        System.arraycopy(exif, 0, prefixed, PREFIX.length, exif.length);
        return prefixed;
    }
}
