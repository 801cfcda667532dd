package tideover.engine.installation.control;

import java.util.List;
import tideover.engine.site.ControlPort;
import tideover.engine.site.ThingId;

/**
 * How a coil or an input comes on.
 *
 * @param port     the coil or input
 * @param supply   whose voltage drives it; of an input that wets its contact itself the input
 * @param wires    cores its current takes, there and back
 * @param contacts contacts its current takes
 * @param needed   those of them without which it is off, whatever else is closed
 */
public record Drive(
        ControlPort port, ControlPort supply, List<Wire> wires, List<ControlPort> contacts, List<ControlPort> needed) {
    public Drive {
        wires = List.copyOf(wires);
        contacts = List.copyOf(contacts);
        needed = List.copyOf(needed);
    }

    /** Whether it is off when this contact is open. */
    boolean needs(ThingId contact) {
        return needed.stream().anyMatch(port -> port.id().equals(contact));
    }
}
