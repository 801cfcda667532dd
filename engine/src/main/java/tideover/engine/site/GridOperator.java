package tideover.engine.site;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The grid operator and what it demands.
 *
 * @param designation       name of the operator
 * @param neutralSeparation what it answered about the neutral; nothing means: not asked, or no answer yet
 * @param conditions        further conditions in the operator's words, printed as they are
 */
public record GridOperator(
        @Nullable String designation,
        @Nullable NeutralRule neutralSeparation,
        @Nullable List<String> conditions) implements Thing {
    public GridOperator {
        if (conditions != null) conditions = List.copyOf(conditions);
    }

    @Override
    public ThingId id() {
        return ThingId.GRID_OPERATOR;
    }
}
