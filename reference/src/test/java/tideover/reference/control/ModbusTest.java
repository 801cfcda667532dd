package tideover.reference.control;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.installation.bus.BusTiming;
import tideover.engine.installation.bus.LineLoad;
import tideover.engine.installation.bus.ModbusFrame;
import tideover.engine.installation.bus.ModbusFrame.Function;
import tideover.engine.site.Parity;

/** Frames, timing and load of a serial line against published examples; the letters are those of the reference. */
class ModbusTest {

    /** Bytes before the check value, and the check value as sent, low byte first. */
    @ParameterizedTest(name = "{0}: {1} ends with {2}")
    @CsvSource({
        "C1, 02 07,                            41 12, MODBUS over Serial Line V1.02 appendix B",
        "C2, 11 03 00 6B 00 03,                76 87, published request",
        "C3, 11 03 06 AE 41 56 52 43 40,       49 AD, published answer",
        "C4, 11 05 00 AC FF 00,                4E 8B, published request",
        "C5, 11 10 00 01 00 02 04 00 0A 01 02, C6 F0, published request",
        "C5, 11 10 00 01 00 02,                12 98, its answer",
        "C6, 0A 01 04 A1 00 01,                AC 63, published request that draws an exception",
        "H3, 01 03 9C 40 00 02,                EB 8F, read of the marker"
    })
    void checkValueIsThePublishedOne(String example, String bytes, String sent, String source) {
        int crc = ModbusFrame.crc(bytes(bytes));
        assertThat("%02X %02X".formatted(crc & 0xFF, crc >> 8)).isEqualTo(sent);
    }

    /** C7, the check value by which algorithms of this kind are told apart: 0x4B37 over the digits 1 to 9. */
    @Test
    void checkValueOfTheDigitsIsThatOfTheAlgorithm() {
        List<Integer> digits = "123456789".chars().boxed().toList();
        assertThat(ModbusFrame.crc(digits)).isEqualTo(0x4B37);
    }

    /** C2 and C9 ask the same of unit 17; C8 is what both have in common. */
    @Test
    void requestReadsOnTheLineAndOnTheNetworkAsPublished() {
        assertThat(ModbusFrame.serial(17, Function.HOLDING_REGISTERS, 107, 3)).isEqualTo("11 03 00 6B 00 03 76 87");
        assertThat(ModbusFrame.tcp(1, 17, Function.HOLDING_REGISTERS, 107, 3))
                .isEqualTo("00 01 00 00 00 06 11 03 00 6B 00 03");
        assertThat(ModbusFrame.serial(17, Function.INPUT_REGISTERS, 107, 3)).startsWith("11 04 00 6B 00 03 ");
    }

    @ParameterizedTest(name = "address {0}, {1} registers")
    @CsvSource({"0, 1", "248, 1", "1, 0", "1, 126"})
    void requestOutsideTheProtocolIsRefused(int address, int registers) {
        assertThatThrownBy(() -> ModbusFrame.serial(address, Function.HOLDING_REGISTERS, 0, registers))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("outside");
    }

    /** D1: 11 bits at 9600 bit/s are 1.1458 ms, t1.5 1.7188 ms, t3.5 4.0104 ms; printed to 0.1 µs. */
    @Test
    void gapsFollowTheCharactersUpToNineteenThousandTwoHundred() {
        BusTiming timing = BusTiming.of(9600, Parity.EVEN, 1);
        assertThat(timing.characterS()).isCloseTo(1.1458e-3, within(5e-8));
        assertThat(timing.innerGapS()).isCloseTo(1.7188e-3, within(5e-8));
        assertThat(timing.outerGapS()).isCloseTo(4.0104e-3, within(5e-8));
        assertThat(BusTiming.of(9600, Parity.NONE, 2)).isEqualTo(timing);
    }

    /** D2: above 19 200 bit/s 0.75 ms and 1.75 ms, whatever the rate; serial guide 2.5.1.1. */
    @ParameterizedTest
    @CsvSource({"38400", "115200"})
    void gapsAreFixedAboveThat(int rateBitPerS) {
        BusTiming timing = BusTiming.of(rateBitPerS, Parity.EVEN, 1);
        assertThat(timing.innerGapS()).isCloseTo(0.75e-3, within(1e-12));
        assertThat(timing.outerGapS()).isCloseTo(1.75e-3, within(1e-12));
    }

    /** The fixed gaps take over above 19 200 bit/s, not at it: 3.5 · 11 / 19200 s. */
    @Test
    void atNineteenThousandTwoHundredTheGapStillFollowsTheCharacter() {
        assertThat(BusTiming.of(19_200, Parity.EVEN, 1).outerGapS()).isCloseTo(2.0052e-3, within(5e-8));
    }

    /** D3: ten registers at 9600 bit/s with 50 ms turnaround, 95.83 ms; three devices with two of them each 575.0 ms. */
    @Test
    void requestTakesItsBytesTwoGapsAndTheTurnaround() {
        double requestS = BusTiming.of(9600, Parity.EVEN, 1).requestS(10, 0.05);
        assertThat(requestS).isCloseTo(95.83e-3, within(5e-6));
        assertThat(3 * 2 * requestS).isCloseTo(575.0e-3, within(5e-5));
    }

    /** D4: ten unit loads, two end resistors of 120 Ω: 57.14 Ω; 470 Ω to 5 V and to common hold the line at 286.5 mV. */
    @Test
    void idleLineIsHeldByTheDividerOfBiasAndLoad() {
        double loadOhm = 1 / (2 / 120.0 + 10 / 12_000.0);
        assertThat(loadOhm).isCloseTo(57.14, within(0.005));
        assertThat(LineLoad.idleV(5, 470, loadOhm)).isCloseTo(0.2865, within(5e-5));
    }

    private static List<Integer> bytes(String hex) {
        List<Integer> bytes = new ArrayList<>();
        for (byte each : HexFormat.ofDelimiter(" ").parseHex(hex)) bytes.add(each & 0xFF);
        return bytes;
    }
}
