package tideover.store.attachment;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Bytes read one after the other; reading past the end means that the file is damaged. */
final class ByteSource {
    private final byte[] bytes;
    private final int end;
    private int at;

    ByteSource(byte[] bytes) {
        this(bytes, 0, bytes.length);
    }

    ByteSource(byte[] bytes, int start, int end) {
        this.bytes = bytes;
        this.at = start;
        this.end = end;
    }

    int left() {
        return end - at;
    }

    int at() {
        return at;
    }

    int u8() throws DamagedFile {
        if (at >= end) throw new DamagedFile("ends at byte " + at);
        return bytes[at++] & 0xFF;
    }

    int u16() throws DamagedFile {
        return u8() << 8 | u8();
    }

    /** Most significant byte first. */
    int i32() throws DamagedFile {
        return u16() << 16 | u16();
    }

    /** Least significant byte first. */
    int i32Reversed() throws DamagedFile {
        return Integer.reverseBytes(i32());
    }

    byte[] take(int count) throws DamagedFile {
        if (count < 0 || count > left()) throw new DamagedFile("%d bytes wanted at byte %d".formatted(count, at));
        at += count;
        return Arrays.copyOfRange(bytes, at - count, at);
    }

    /** Four letters. */
    String name() throws DamagedFile {
        return new String(take(4), StandardCharsets.ISO_8859_1);
    }
}
