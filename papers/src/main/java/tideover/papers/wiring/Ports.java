package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.site.BusPort;
import tideover.engine.site.ControlPort;
import tideover.engine.site.Port;
import tideover.engine.wiring.schedule.ControlEnd;
import tideover.papers.Wording;

/** What ports are for, in a few words. */
final class Ports {

    private final ControlNet net;
    private final Wording wording;

    Ports(ControlNet net, Wording wording) {
        this.net = net;
        this.wording = wording;
    }

    /** What the port at an end of a core is for. */
    String at(@Nullable ControlEnd end) {
        return end == null
                ? ""
                : net.findPort(end.terminal().port()).map(this::of).orElse("");
    }

    private String of(Port port) {
        return port instanceof BusPort bus ? bus(bus) : signal((ControlPort) port);
    }

    private String bus(BusPort bus) {
        List<String> parts = new ArrayList<>();
        parts.add(wording.text("wiring.port.bus"));
        if (bus.role() != null) parts.add(wording.word(bus.role()));
        if (bus.address() != null) parts.add(wording.text("wiring.port.address", String.valueOf(bus.address())));
        return String.join(", ", parts);
    }

    private String signal(ControlPort port) {
        String kind = port.kind() == null ? "?" : wording.word(port.kind());
        if (port.number() != null) kind = wording.text("wiring.port.number", kind, String.valueOf(port.number()));
        if (port.closedWhen() != null)
            return wording.text("wiring.port.closedWhen", kind, wording.word(port.closedWhen()));
        return port.onMeans() == null ? kind : wording.text("wiring.port.onMeans", kind, wording.word(port.onMeans()));
    }
}
