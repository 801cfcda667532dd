package tideover.engine.starting;

import java.util.List;
import tideover.engine.site.FactId;
import tideover.engine.site.ThingId;

/** What a start does to the voltages of the house in one state. */
public sealed interface Dips {

    /**
     * The voltage of one place before and during the start.
     *
     * @param place   a board, or the motor's own circuit
     * @param beforeV line to neutral before, r.m.s., on the line that falls most [V]
     * @param duringV on the same line during the start [V]
     * @param ratio   the difference over nominal voltage; negative where a line rises
     */
    record Dip(ThingId place, double beforeV, double duringV, double ratio) {}

    /**
     * Voltages were found.
     *
     * @param all largest dip first; none for a motor that ramps up
     */
    record Solved(Motor motor, List<Dip> all) implements Dips {
        public Solved {
            all = List.copyOf(all);
        }
    }

    /** No voltage was found at which all loads get what they draw: it breaks down. */
    record Collapsed(Motor motor) implements Dips {}

    /** The neutral of the motor is not through: its voltage hangs on what else runs, with or without a start. */
    record Interrupted() implements Dips {}

    /** The way to the motor is not surveyed, or its power not known. */
    record Unknown(List<FactId> facts) implements Dips {
        public Unknown {
            facts = List.copyOf(facts);
        }
    }
}
