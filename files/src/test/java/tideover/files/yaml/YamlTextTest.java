package tideover.files.yaml;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.files.yaml.YamlProblem.Kind;

/** What makes a text no tree, each with its place. */
class YamlTextTest {
    private static List<String> problems(byte[] bytes) {
        return YamlText.read("t", bytes).problems().stream()
                .map(p -> "%d:%d %s%s"
                        .formatted(
                                p.spot().line(),
                                p.spot().column(),
                                p.kind(),
                                p.arguments().isEmpty() ? "" : " " + String.join(" | ", p.arguments())))
                .toList();
    }

    private static List<String> problems(String text) {
        return problems(text.getBytes(StandardCharsets.UTF_8));
    }

    static Stream<Arguments> broken() {
        return Stream.of(
                Arguments.of("", "0:0 EMPTY"),
                Arguments.of("# only a remark\n", "0:0 EMPTY"),
                Arguments.of("a: 1\n\tb: 2\n", "2:1 TAB"),
                Arguments.of("a:\n  b: 'open\nc: d\n", "2:6 QUOTE_OPEN"),
                Arguments.of("a: 1\nb: [1, 2\nc: d\n", "2:4 BRACKET_OPEN"),
                Arguments.of("a: {x: 1, , y}\n", "1:11 VALUE_MISSING ,"),
                Arguments.of("a:\n  b: 1\n c: 2\n", "3:2 INDENTATION"),
                Arguments.of("a: b: c\n", "1:5 COLON"),
                Arguments.of("a: @x\n", "1:4 FIRST_SIGN @"),
                Arguments.of("a: !!int 3\n", "1:4 TAG tag:yaml.org,2002:int"),
                Arguments.of("a: 1\n---\nb: 2\n", "2:1 SECOND_DOCUMENT"),
                Arguments.of("[a, b]: c\n", "1:1 KEY_IS_NO_TEXT"),
                Arguments.of("a: 1\nb: 2\na: 3\n", "3:1 KEY_TWICE a | 1"),
                Arguments.of("a: *nobody\n", "1:4 ALIAS_UNKNOWN nobody"),
                Arguments.of("a: &x [1, *x]\n", "1:11 ALIAS_IN_ITSELF x"),
                Arguments.of("%YAML 9.9\n---\na: 1\n", "0:0 OTHER Version{major=9, minor=9}"),
                Arguments.of("a: b\u0007c\n", "1:5 CONTROL_CHARACTER U+0007"));
    }

    @ParameterizedTest
    @MethodSource("broken")
    void aBrokenTextIsToldWithItsPlace(String text, String expected) {
        assertThat(problems(text)).containsExactly(expected);
    }

    @Test
    void otherEncodingsAreNamed() {
        for (Charset utf16 : List.of(StandardCharsets.UTF_16, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE))
            assertThat(problems("a: ä\n".getBytes(utf16))).containsExactly("0:0 OTHER_ENCODING UTF-16");
        assertThat(problems("\uFEFFa: ä\n".getBytes(Charset.forName("UTF-32LE"))))
                .containsExactly("0:0 OTHER_ENCODING UTF-32");
        assertThat(problems("a: 1\nb: Küche\n".getBytes(StandardCharsets.ISO_8859_1)))
                .containsExactly("2:5 NOT_UTF8 FC");
    }

    @Test
    void aTextCutInTheMiddleOfACharacterIsNoUtf8() {
        byte[] whole = "a: ü".getBytes(StandardCharsets.UTF_8);
        assertThat(problems(Arrays.copyOf(whole, whole.length - 1))).containsExactly("1:4 NOT_UTF8 C3");
    }

    @Test
    void aFileBeyondTheLimitIsNotParsed() {
        assertThat(problems(new byte[YamlText.LARGEST_BYTES + 1])).containsExactly("0:0 TOO_LARGE 4");
    }

    @Test
    void aliasesThatMultiplyAreStopped() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 10; i++)
            bomb.append("a%d: &a%d [%s]\n".formatted(i, i, ("*a" + (i - 1) + ", ").repeat(10)));
        assertThat(problems(bomb.toString())).hasSize(1).first().asString().contains("TOO_MANY_VALUES");
    }

    @Test
    void depthIsBoundedWhateverTheFile() {
        for (String deep : List.of("[".repeat(1_000_000), "{a: ".repeat(500_000), "- ".repeat(500_000)))
            assertThat(problems(deep)).hasSize(1).first().asString().contains("TOO_DEEP 24");
    }

    @Test
    void jsonWithTabsAndEscapesIsRead() {
        YamlResult result = YamlText.read(
                "t", "{\n\t\"a\":\t[1, \"x\\/\\u00fc\"],\r\n\t\"b\": null\n}".getBytes(StandardCharsets.UTF_8));
        assertThat(result.problems()).isEmpty();
        Node.Mapping root = (Node.Mapping) result.root();
        Node.Sequence list = (Node.Sequence) root.find("a").orElseThrow();
        assertThat(((Node.Scalar) list.items().get(1)).text()).isEqualTo("x/ü");
        assertThat(root.find("b").orElseThrow().isNothing()).isTrue();
    }

    @Test
    void everyKindOfProblemIsTested() {
        Set<Kind> seen = EnumSet.noneOf(Kind.class);
        broken().forEach(c -> seen.add(Kind.valueOf(((String) c.get()[1]).split(" ")[1])));
        // Tested by name above.
        seen.addAll(
                EnumSet.of(Kind.OTHER_ENCODING, Kind.NOT_UTF8, Kind.TOO_LARGE, Kind.TOO_MANY_VALUES, Kind.TOO_DEEP));
        assertThat(seen).containsExactlyInAnyOrder(Kind.values());
    }

    @Test
    void aWrongNumberOfArgumentsIsACallersMistake() {
        assertThatCode(() -> new YamlProblem(Kind.TAB, Spot.whole("t"), List.of("x")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
