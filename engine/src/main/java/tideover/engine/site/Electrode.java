package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * An earth electrode of the house.
 *
 * @param earth         the main earthing terminal, or an earth of its own
 * @param resistanceOhm to remote earth, measured [Ω]
 */
public record Electrode(
        ThingId id,
        @Nullable String designation,
        @Nullable EarthPlace earth,
        @Nullable Double resistanceOhm) implements Thing {}
