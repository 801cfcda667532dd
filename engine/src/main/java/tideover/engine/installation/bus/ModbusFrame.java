package tideover.engine.installation.bus;

import java.util.HexFormat;
import java.util.List;

/** The bytes of a request to read registers, as one should see them on the line. */
public final class ModbusFrame {

    private static final int START = 0xFFFF;
    private static final int POLYNOMIAL = 0xA001;

    /** Most registers one request may ask for (MODBUS application protocol V1.1b3, 6.3). */
    public static final int MOST_REGISTERS = 125;

    /** Which registers are read. */
    public enum Function {
        /** Function code 03. */
        HOLDING_REGISTERS,
        /** Function code 04. */
        INPUT_REGISTERS
    }

    private ModbusFrame() {}

    /**
     * The check value of a frame: polynomial 0xA001 (0x8005 reflected), start 0xFFFF.
     *
     * @param bytes each 0 to 255
     * @return 0 to 0xFFFF; its low byte is sent first
     * @see "MODBUS over Serial Line V1.02, 2.5.1.2 and appendix B"
     */
    public static int crc(List<Integer> bytes) {
        int crc = START;
        for (int each : bytes) {
            crc ^= each;
            for (int bit = 0; bit < 8; bit++) crc = (crc & 1) == 0 ? crc >> 1 : crc >> 1 ^ POLYNOMIAL;
        }
        return crc;
    }

    /**
     * A request on a serial line (RTU).
     *
     * @param address  1 to 247
     * @param first    address of the first register in the frame, 0 to 65535
     * @param registers 1 to 125
     * @return such as {@code 11 03 00 6B 00 03 76 87}
     * @throws IllegalArgumentException if a number is outside its range
     */
    public static String serial(int address, Function function, int first, int registers) {
        List<Integer> bytes = request(address, function, first, registers);
        int crc = crc(bytes);
        return hex(bytes) + " " + hex(List.of(crc & 0xFF, crc >> 8));
    }

    /**
     * A request over TCP: transaction, protocol 0, length and unit before the same request, no check value.
     *
     * @param transaction chosen by the client, 0 to 65535
     * @return such as {@code 00 01 00 00 00 06 11 03 00 6B 00 03}
     * @throws IllegalArgumentException if a number is outside its range
     * @see "MODBUS Messaging on TCP/IP V1.0b, 3.1.3"
     */
    public static String tcp(int transaction, int address, Function function, int first, int registers) {
        List<Integer> bytes = request(address, function, first, registers);
        requireRange("transaction", transaction, 0, 0xFFFF);
        return hex(List.of(transaction >> 8, transaction & 0xFF, 0, 0, bytes.size() >> 8, bytes.size() & 0xFF)) + " "
                + hex(bytes);
    }

    private static List<Integer> request(int address, Function function, int first, int registers) {
        requireRange("address", address, 1, 247);
        requireRange("first register", first, 0, 0xFFFF);
        requireRange("number of registers", registers, 1, MOST_REGISTERS);
        int code = switch (function) {
            case HOLDING_REGISTERS -> 3;
            case INPUT_REGISTERS -> 4;
        };
        return List.of(address, code, first >> 8, first & 0xFF, registers >> 8, registers & 0xFF);
    }

    private static void requireRange(String what, int value, int least, int most) {
        if (value < least || value > most)
            throw new IllegalArgumentException("%s %d is outside %d to %d".formatted(what, value, least, most));
    }

    private static String hex(List<Integer> bytes) {
        byte[] raw = new byte[bytes.size()];
        for (int i = 0; i < raw.length; i++) raw[i] = (byte) (int) bytes.get(i);
        return HexFormat.ofDelimiter(" ").withUpperCase().formatHex(raw);
    }
}
