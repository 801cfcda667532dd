package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The terminals of one control function of a device, under the device's own names and numbers.
 *
 * @param at            device it belongs to; of a supply also the circuit that feeds it
 * @param kind          what it does
 * @param terminals     the maker's names, in the order told in {@link PortKind}
 * @param number        the device's own number of an input or output
 * @param form          how the signal is given or wanted
 * @param onMeans       what it means that it is on, as the device is set
 * @param closedWhen    of an auxiliary contact: where the main contacts are while it is closed
 * @param voltageV      of a supply, coil or input: rated voltage, d.c. [V]
 * @param leastVoltageV of a coil or input: least voltage at which it surely is on [V]
 * @param currentA      of a supply: largest it gives; of a coil or input: what it draws; of a contact: largest it switches [A]
 * @param leastCurrentA of a contact: least current that keeps it clean [A]
 * @param operateTimeS  of a coil: until the main contacts have moved when it is energised [s]
 * @param releaseTimeS  of a coil: until they have moved back [s]
 */
public record ControlPort(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId at,
        @Nullable PortKind kind,
        @Nullable List<String> terminals,
        @Nullable Integer number,
        @Nullable SignalForm form,
        @Nullable SignalMeaning onMeans,
        @Nullable MainContacts closedWhen,
        @Nullable Double voltageV,
        @Nullable Double leastVoltageV,
        @Nullable Double currentA,
        @Nullable Double leastCurrentA,
        @Nullable Double operateTimeS,
        @Nullable Double releaseTimeS)
        implements Port {
    public ControlPort {
        if (terminals != null) terminals = List.copyOf(terminals);
    }
}
