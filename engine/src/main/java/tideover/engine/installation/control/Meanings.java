package tideover.engine.installation.control;

import java.util.Set;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.ControlPort;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Port;
import tideover.engine.site.SignalMeaning;
import tideover.engine.site.Thing;

/** Which signals speak of which device, and how a port is named in a sentence. */
final class Meanings {

    static final Set<SignalMeaning> POSITIONS = Set.of(
            SignalMeaning.SWITCH_OPEN, SignalMeaning.SWITCH_CLOSED, SignalMeaning.LINK_OPEN, SignalMeaning.LINK_CLOSED);
    private static final Set<SignalMeaning> OF_SWITCH = Set.of(SignalMeaning.SWITCH_OPEN, SignalMeaning.SWITCH_CLOSED);
    private static final Set<SignalMeaning> OF_LINK = Set.of(SignalMeaning.LINK_OPEN, SignalMeaning.LINK_CLOSED);

    private Meanings() {}

    /** Signals that speak of the position of a switching device. */
    static Set<SignalMeaning> of(Thing device) {
        return device instanceof IslandingSwitch ? OF_SWITCH : OF_LINK;
    }

    /** The other position of the same device; anything else is its own. */
    static SignalMeaning opposite(SignalMeaning meaning) {
        return switch (meaning) {
            case SWITCH_OPEN -> SignalMeaning.SWITCH_CLOSED;
            case SWITCH_CLOSED -> SignalMeaning.SWITCH_OPEN;
            case LINK_OPEN -> SignalMeaning.LINK_CLOSED;
            case LINK_CLOSED -> SignalMeaning.LINK_OPEN;
            case RELAYS_OPEN, GRID_PRESENT, MAY_RUN -> meaning;
        };
    }

    /** The maker's names of the terminals of a port. */
    static PhraseArg terminals(Port port) {
        return PhraseArg.verbatim(port.terminals() == null ? "–" : String.join(", ", port.terminals()));
    }

    /** The device a port belongs to. */
    static PhraseArg device(ControlPort port) {
        return port.at() == null ? PhraseArg.verbatim("–") : PhraseArg.name(port.at());
    }
}
