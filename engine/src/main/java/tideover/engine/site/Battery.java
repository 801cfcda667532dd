package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A battery.
 *
 * @param inverters       inverters it is connected to
 * @param usableEnergyWh  usable energy [Wh]
 * @param chargePowerW    largest charging power [W]
 * @param dischargePowerW largest discharging power [W]
 * @param place           kind of place it stands in
 * @param room            what that place is called in the house
 */
public record Battery(
        ThingId id,
        @Nullable String designation,
        @Nullable List<ThingId> inverters,
        @Nullable Double usableEnergyWh,
        @Nullable Double chargePowerW,
        @Nullable Double dischargePowerW,
        @Nullable BatteryPlace place,
        @Nullable String room)
        implements Thing {
    public Battery {
        if (inverters != null) inverters = List.copyOf(inverters);
    }
}
