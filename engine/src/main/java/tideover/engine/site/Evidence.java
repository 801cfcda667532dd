package tideover.engine.site;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * Where a fact comes from. The narrowest evidence wins: one fact before a whole thing before all of house or plan.
 *
 * @param about    {@code thing.field} for one fact or a group of them, {@code thing} for all facts of a thing, {@code house},
 *                 {@code plan} or {@code built} for all facts stated there
 * @param origin   who or what says so
 * @param by       person or instrument
 * @param on       day it was said or measured
 * @param document paper, photo or letter that shows it
 */
public record Evidence(
        String about,
        Origin origin,
        @Nullable String by,
        @Nullable LocalDate on,
        @Nullable String document) {

    /** The word that stands for everything found in the house. */
    public static final String HOUSE = "house";
    /** The word that stands for everything decided in the plan. */
    public static final String PLAN = "plan";
    /** The word that stands for everything built otherwise than planned. */
    public static final String BUILT = "built";

    /** An assumption about one fact. */
    public static Evidence assumed(FactId fact) {
        return new Evidence(fact.toString(), Origin.ASSUMED, null, null, null);
    }
}
