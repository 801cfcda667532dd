package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * PV modules on one input of an inverter.
 *
 * @param inverter   inverter they are connected to
 * @param peakPowerW power at standard test conditions [W]
 * @param azimuthDeg direction they face, from north over east [°]
 * @param tiltDeg    from the horizontal [°]
 */
public record PvArray(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId inverter,
        @Nullable Double peakPowerW,
        @Nullable Double azimuthDeg,
        @Nullable Double tiltDeg)
        implements Thing {}
