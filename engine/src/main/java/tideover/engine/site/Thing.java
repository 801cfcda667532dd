package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/** Anything in a site that has facts: a device, a conductor run, a place. */
public sealed interface Thing
        permits Place,
                GridOperator,
                Supply,
                Fed,
                Battery,
                PvArray,
                NeutralEarthLink,
                NeutralEarthSwitch,
                Electrode,
                ByPass,
                Isolator,
                Notice,
                Port,
                ControlCable,
                PowerTerminals,
                IslandSettings,
                Nameplate {

    /** The lasting id. */
    ThingId id();

    /** The printed name, or nothing where only the id is known. */
    @Nullable
    String designation();

    /** One fact of this thing. */
    default FactId fact(String field) {
        return new FactId(id(), field);
    }

    /**
     * The value of a field.
     *
     * @param field path inside the thing, parts joined by dots
     * @return nothing where the fact is missing
     * @throws IllegalArgumentException if there is no such field
     */
    default @Nullable Object value(String field) {
        return Overlay.value(this, field);
    }
}
