package tideover.engine.installation.bus;

import java.util.List;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.BusPort;

/** How ports are named in a sentence: by the device they belong to. */
final class Devices {

    private Devices() {}

    static PhraseArg of(BusPort port) {
        return PhraseArg.name(port.at() == null ? port.id() : port.at());
    }

    static PhraseArg of(List<BusPort> ports) {
        return PhraseArg.names(ports.stream()
                .map(port -> port.at() == null ? port.id() : port.at())
                .toList());
    }
}
