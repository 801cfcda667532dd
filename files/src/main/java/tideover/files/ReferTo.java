package tideover.files;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.Battery;
import tideover.engine.site.ByPass;
import tideover.engine.site.Circuit;
import tideover.engine.site.Electrode;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.Isolator;
import tideover.engine.site.Meter;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.Port;
import tideover.engine.site.PvArray;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;

/** What a reference may name. */
public enum ReferTo {
    /** The supply, or a thing in the path of power. */
    FEEDER,
    /** The main earthing terminal, an electrode, or a thing in the path of power. */
    EARTH,
    INVERTER,
    CIRCUIT,
    /** The supply, an inverter, a battery or PV modules. */
    SOURCE,
    METER,
    /** What has terminals and a nameplate: a thing in the path of power, a switch, a by-pass or a source. */
    DEVICE,
    /** Terminals of control or bus. */
    PORT,
    /** A thing of a list. */
    LISTED,
    ANY;

    /** Whether it may name things of a kind. */
    public boolean allows(ThingKind kind) {
        Class<? extends Thing> type = kind.type();
        return switch (this) {
            case FEEDER -> Fed.class.isAssignableFrom(type);
            case EARTH -> Fed.class.isAssignableFrom(type) || type == Electrode.class;
            case INVERTER -> type == Inverter.class;
            case CIRCUIT -> type == Circuit.class;
            case SOURCE -> type == Inverter.class || type == Battery.class || type == PvArray.class;
            case METER -> type == Meter.class;
            case DEVICE ->
                Fed.class.isAssignableFrom(type)
                        || type == NeutralEarthSwitch.class
                        || type == ByPass.class
                        || type == Isolator.class
                        || type == Battery.class
                        || type == PvArray.class;
            case PORT -> Port.class.isAssignableFrom(type);
            case LISTED, ANY -> true;
        };
    }

    /** Whether it may name what is in every house and in no list. */
    public boolean allows(ThingId reserved) {
        if (reserved.equals(ThingId.SUPPLY)) return this == FEEDER || this == SOURCE || this == ANY;
        if (reserved.equals(ThingId.MAIN_EARTH)) return this == EARTH || this == ANY;
        return this == ANY;
    }

    /** What may be named, as written in a file. */
    String allowed() {
        StringBuilder text = new StringBuilder();
        for (ThingId reserved : new ThingId[] {ThingId.SUPPLY, ThingId.MAIN_EARTH})
            if (allows(reserved)) append(text, reserved.text());
        for (ThingKind kind : ThingKind.values()) if (allows(kind)) append(text, kind.section());
        return text.toString();
    }

    private static void append(StringBuilder text, String word) {
        if (!text.isEmpty()) text.append(", ");
        text.append(word);
    }

    static @Nullable ReferTo of(String text) {
        return text.isEmpty() ? null : valueOf(text);
    }
}
