package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Terminals of a device for control wiring: of one signal, or of a bus. */
public sealed interface Port extends Thing permits ControlPort, BusPort {

    /** Device it belongs to. */
    @Nullable
    ThingId at();

    /** The maker's names of its terminals. */
    @Nullable
    List<String> terminals();

    /** One of its terminals by its name. */
    default TerminalId terminal(String name) {
        return new TerminalId(id(), name);
    }
}
