package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A thing in the path of power: its supply cable begins at the outgoing terminals of another thing. Between those
 * terminals and its own lie, in this order, its overcurrent device, its residual current device and the cable.
 */
public sealed interface Fed extends Thing
        permits Meter, IslandingSwitch, ProtectiveDevice, Board, RcdGroup, Circuit, Inverter {

    /** The thing at whose outgoing terminals the lines begin. For an inverter: where it is connected. */
    @Nullable
    ThingId fedFrom();

    /** The thing at whose neutral bar the neutral begins; nothing means: where the lines begin. */
    @Nullable
    ThingId neutralFrom();

    /** The conductors of the supply cable; nothing where nobody has looked. */
    @Nullable
    List<Conductor> conductors();

    /** The supply cable; nothing where the thing sits directly at the one before it. */
    @Nullable
    Cable cable();

    /** Overcurrent device at the beginning of the supply cable. */
    @Nullable
    OvercurrentDevice protection();

    /** Residual current device of this thing. */
    @Nullable
    ResidualDevice rcd();

    /** Whether the supply cable is known to have this conductor. */
    default boolean has(Conductor conductor) {
        List<Conductor> all = conductors();
        return all != null && all.contains(conductor);
    }
}
