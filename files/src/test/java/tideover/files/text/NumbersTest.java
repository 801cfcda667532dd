package tideover.files.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {
    // RFC 8785, Appendix B: bits of a double and its one text.
    @ParameterizedTest
    @CsvSource({
        "0000000000000000, 0",
        "8000000000000000, 0",
        "7fefffffffffffff, 1.7976931348623157e+308",
        "4340000000000000, 9007199254740992",
        "4430000000000000, 295147905179352830000",
        "44b52d02c7e14af5, 9.999999999999997e+22",
        "44b52d02c7e14af6, 1e+23",
        "444b1ae4d6e2ef4e, 999999999999999700000",
        "444b1ae4d6e2ef4f, 999999999999999900000",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "41b3de4355555553, 333333333.3333332",
        "41b3de4355555555, 333333333.3333333",
        "becbf647612f3696, -0.0000033333333333333333"
    })
    void aNumberHasTheTextOfRfc8785(String bits, String text) {
        assertThat(Numbers.shortest(Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16))))
                .isEqualTo(text);
    }

    @Test
    void everyNumberReadsBackAsItself() {
        SplittableRandom random = new SplittableRandom(8785);
        for (int i = 0; i < 20_000; i++) {
            double value = Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value))
                assertThat(Numbers.parse(Numbers.shortest(value))).isEqualTo(value);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", "-", ".", "1.2.3", "1e", "1e+", "0x10", "1_000", "1,5", "12 m", "NaN", ".inf", "١٢", "1f", "1d"
            })
    void whatIsNoDecimalNumberIsNone(String text) {
        assertThat(Numbers.parse(text)).isNull();
    }

    @ParameterizedTest
    @CsvSource({"5, 5", "-0, 0", "+7, 7", ".5, 0.5", "5., 5", "007, 7", "1e3, 1000", "1E-3, 0.001"})
    void everySpellingOfTheCoreSchemaIsRead(String text, double value) {
        assertThat(Numbers.parse(text)).isEqualTo(value);
    }
}
