package tideover.files.yaml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.files.yaml.YamlProblem.Kind;

/** From bytes to a tree. */
public final class YamlText {
    /** Largest file read [bytes]; a house with two hundred circuits takes a fiftieth of it. */
    public static final int LARGEST_BYTES = 4 * 1024 * 1024;

    private YamlText() {}

    /**
     * Reads one document.
     *
     * @param name how messages call the file
     */
    public static YamlResult read(String name, byte[] bytes) {
        if (bytes.length > LARGEST_BYTES)
            return broken(YamlProblem.of(Kind.TOO_LARGE, Spot.whole(name), Integer.toString(LARGEST_BYTES >> 20)));
        String other = otherEncoding(bytes);
        if (other != null) return broken(YamlProblem.of(Kind.OTHER_ENCODING, Spot.whole(name), other));

        int start = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        ByteBuffer in = ByteBuffer.wrap(bytes, start, bytes.length - start);
        CharBuffer out = CharBuffer.allocate(bytes.length - start + 1);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CoderResult result = decoder.decode(in, out, true);
        out.flip();
        String text = out.toString();
        if (result.isError())
            return broken(YamlProblem.of(
                    Kind.NOT_UTF8,
                    spotAfter(name, text, text.length()),
                    "%02X".formatted(bytes[in.position()] & 0xFF)));
        for (int i = 0; i < text.length(); i++)
            if (isControl(text.charAt(i)))
                return broken(YamlProblem.of(
                        Kind.CONTROL_CHARACTER, spotAfter(name, text, i), "U+%04X".formatted((int) text.charAt(i))));
        return new TreeBuilder(name).build(text);
    }

    private static YamlResult broken(YamlProblem problem) {
        return new YamlResult(null, List.of(problem));
    }

    private static @Nullable String otherEncoding(byte[] bytes) {
        if (startsWith(bytes, 0xFF, 0xFE, 0, 0) || startsWith(bytes, 0, 0, 0xFE, 0xFF)) return "UTF-32";
        if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) return "UTF-16";
        // Without a mark: the first sign of a site file is ASCII, so UTF-16 has one zero byte in its first pair.
        if (bytes.length >= 2 && (bytes[0] == 0) != (bytes[1] == 0)) return "UTF-16";
        return null;
    }

    private static boolean startsWith(byte[] bytes, int... wanted) {
        if (bytes.length < wanted.length) return false;
        for (int i = 0; i < wanted.length; i++) if ((bytes[i] & 0xFF) != wanted[i]) return false;
        return true;
    }

    /**
     * What YAML calls not printable (YAML 1.2.2, production 1), and what only some of its readers take for the end of a
     * line.
     */
    private static boolean isControl(char c) {
        if (c < 0x20) return c != '\t' && c != '\n' && c != '\r';
        return (c >= 0x7F && c < 0xA0) || c == 0x2028 || c == 0x2029 || c == 0xFEFF || c == 0xFFFE || c == 0xFFFF;
    }

    private static Spot spotAfter(String name, String text, int end) {
        int line = 1;
        int lineStart = 0;
        for (int i = 0; i < end; i++) {
            if (text.charAt(i) != '\n') continue;
            line++;
            lineStart = i + 1;
        }
        return new Spot(name, line, text.codePointCount(lineStart, end) + 1);
    }
}
