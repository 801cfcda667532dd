package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * What a device that was built in says of itself.
 *
 * @param at           device
 * @param article      article name on it
 * @param serialNumber its own number
 * @param firmware     version of the program in it
 */
public record Nameplate(
        ThingId id,
        @Nullable String designation,
        @Nullable ThingId at,
        @Nullable String article,
        @Nullable String serialNumber,
        @Nullable String firmware)
        implements Thing {}
