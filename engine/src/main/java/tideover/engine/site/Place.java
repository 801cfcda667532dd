package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * Where the house stands.
 *
 * @param designation  what the site is called on paper; no person's name
 * @param country      two letters, ISO 3166-1
 * @param latitudeDeg  north positive [°], -90 to 90
 * @param longitudeDeg east positive [°], -180 to 180
 * @param altitudeM    above sea level [m]
 * @param timeZone     IANA name
 */
public record Place(
        @Nullable String designation,
        @Nullable String country,
        @Nullable Double latitudeDeg,
        @Nullable Double longitudeDeg,
        @Nullable Double altitudeM,
        @Nullable String timeZone)
        implements Thing {
    @Override
    public ThingId id() {
        return ThingId.PLACE;
    }
}
