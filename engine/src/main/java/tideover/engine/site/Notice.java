package tideover.engine.site;

import org.jspecify.annotations.Nullable;

/**
 * A warning notice that more than one source feeds the installation.
 *
 * @param at thing at which it stands
 */
public record Notice(
        ThingId id, @Nullable String designation, @Nullable ThingId at) implements Thing {}
