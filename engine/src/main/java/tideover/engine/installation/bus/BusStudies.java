package tideover.engine.installation.bus;

import java.util.List;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.site.BusMedium;
import tideover.engine.site.BusPort;
import tideover.engine.site.BusRole;

/**
 * The buses of a site.
 *
 * @param lines   lines of RS-485
 * @param network ports on TCP
 * @param unknown ports of which nobody has stated what they run on
 */
public record BusStudies(List<BusLine> lines, List<BusPort> network, List<BusPort> unknown) {
    public BusStudies {
        lines = List.copyOf(lines);
        network = List.copyOf(network);
        unknown = List.copyOf(unknown);
    }

    /** The buses of a control wiring. */
    public static BusStudies of(ControlNet net) {
        List<BusPort> all = net.busPorts();
        return new BusStudies(
                BusLine.among(net, on(all, BusMedium.RS485)),
                on(all, BusMedium.TCP),
                all.stream().filter(port -> port.medium() == null).toList());
    }

    private static List<BusPort> on(List<BusPort> ports, BusMedium medium) {
        return ports.stream().filter(port -> port.medium() == medium).toList();
    }

    /** Ports on the network that ask. */
    List<BusPort> networkClients() {
        return network.stream().filter(port -> port.role() == BusRole.CLIENT).toList();
    }

    /** Ports on the network that answer. */
    List<BusPort> networkServers() {
        return network.stream().filter(port -> port.role() == BusRole.SERVER).toList();
    }
}
