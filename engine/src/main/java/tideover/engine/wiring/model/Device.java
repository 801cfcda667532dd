package tideover.engine.wiring.model;

import java.util.List;
import tideover.engine.site.FeedbackContact;
import tideover.engine.site.RestPosition;
import tideover.engine.site.SignalForm;
import tideover.engine.site.ThingId;

/** A switching device as the model sees it. */
final class Device {

    /** What it is. */
    enum Role {
        SWITCH,
        LINK,
        BY_PASS,
        OTHER
    }

    /** How it is moved. */
    enum Drive {
        /** By coils and inputs over control wiring. */
        WIRED,
        /** From inside the inverter it is part of; or nobody has stated its control, and it does as it should. */
        INSIDE,
        HAND
    }

    /**
     * What moves it.
     *
     * @param nodeA     terminal
     * @param nodeB     other end of a coil or contact input; reference of an electronic one; -1: none
     * @param form      of an input; of a coil CONTACT
     * @param isCoil    whether both ends must carry a supply
     * @param closes    where it moves to while energised
     */
    record Actuator(int nodeA, int nodeB, SignalForm form, boolean isCoil, boolean closes) {}

    final ThingId id;
    final Role role;
    final Drive drive;
    final int[] poles;
    private final long gates;
    final RestPosition rest;
    final boolean isMirrored;
    final List<Actuator> actuators;
    final double operateTimeS;
    final double releaseTimeS;

    Device(
            ThingId id,
            Role role,
            Drive drive,
            int[] poles,
            RestPosition rest,
            FeedbackContact feedback,
            List<Actuator> actuators,
            double operateTimeS,
            double releaseTimeS) {
        this.id = id;
        this.role = role;
        this.drive = drive;
        this.poles = poles;
        long all = 0;
        for (int pole : poles) all |= 1L << pole;
        this.gates = all;
        this.rest = rest;
        this.isMirrored = feedback == FeedbackContact.MIRROR || feedback == FeedbackContact.POSITIVELY_DRIVEN;
        this.actuators = List.copyOf(actuators);
        this.operateTimeS = operateTimeS;
        this.releaseTimeS = releaseTimeS;
    }

    /** Gates of all its poles. */
    long gates() {
        return gates;
    }

    /** Whether it rests closed when nothing moves it. A switch that stays as it was starts open. */
    boolean restsClosed() {
        return rest == RestPosition.CLOSED;
    }
}
