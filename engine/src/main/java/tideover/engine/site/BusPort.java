package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The bus terminals of one device and how the device is set.
 *
 * @param at                device it belongs to
 * @param medium            what the bus runs on
 * @param role              asks or answers
 * @param terminals         the maker's names: the line that is positive when idle (D1), the other (D0), the common
 * @param passThrough       second set of the same terminals for the cable onwards; nothing: none
 * @param address           of a server: its address, 1 to 247
 * @param networkAddress    on TCP: its address in the network
 * @param rateBitPerS       bit rate [bit/s]
 * @param parity            parity bit
 * @param stopBits          stop bits, 1 or 2
 * @param unitLoadRatio     load on the line, 1 is one unit load of 12 kΩ
 * @param terminationOhm    end resistor switched in here; nothing: none [Ω]
 * @param biasOhm           each of the two resistors that hold the idle line; nothing: none here [Ω]
 * @param biasVoltageV      voltage these are fed from [V]
 * @param registers         of a server: registers read in one request
 * @param requests          of a server: requests in one round
 * @param turnaroundS       of a server: longest time until it answers [s]
 * @param responseNeededS   of the client: within which it must know a value anew [s]
 * @param timeoutS          of the client: after which it gives up a request [s]
 */
public record BusPort(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId at,
        @Nullable BusMedium medium,
        @Nullable BusRole role,
        @Nullable List<String> terminals,
        @Nullable List<String> passThrough,
        @Nullable Integer address,
        @Nullable String networkAddress,
        @Nullable Integer rateBitPerS,
        @Nullable Parity parity,
        @Nullable Integer stopBits,
        @Nullable Double unitLoadRatio,
        @Nullable Double terminationOhm,
        @Nullable Double biasOhm,
        @Nullable Double biasVoltageV,
        @Nullable Integer registers,
        @Nullable Integer requests,
        @Nullable Double turnaroundS,
        @Nullable Double responseNeededS,
        @Nullable Double timeoutS)
        implements Port {
    public BusPort {
        if (terminals != null) terminals = List.copyOf(terminals);
        if (passThrough != null) passThrough = List.copyOf(passThrough);
    }
}
