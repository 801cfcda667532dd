package tideover.files;

import org.jspecify.annotations.Nullable;
import tideover.engine.site.ThingId;

/**
 * Whose fields are being read.
 *
 * @param side    where they are stated
 * @param id      of the thing; nothing where it has none or a bad one
 * @param where   how messages begin the name of a field
 * @param prefill whether missing facts take their defaults
 */
record Owner(Side side, @Nullable ThingId id, String where, Prefill prefill) {
    /** Whether missing facts take their defaults. */
    enum Prefill {
        DEFAULTS,
        /** A planned change of a found thing says only what changes. */
        NOTHING
    }
}
