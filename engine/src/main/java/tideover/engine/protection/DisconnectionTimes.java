package tideover.engine.protection;

import java.util.List;
import tideover.engine.rules.Source;
import tideover.engine.site.EarthingSystem;

/** How long a circuit may stay live after a fault to earth, alternating voltage. */
public final class DisconnectionTimes {

    private final List<Row> rows;

    /**
     * One band of voltage.
     *
     * @param aboveVoltageV line to earth, above this [V]
     * @param upToVoltageV  and up to this [V]
     * @param timeS         longest time [s]
     */
    public record Row(
            EarthingSystem system,
            CircuitRole role,
            double aboveVoltageV,
            double upToVoltageV,
            double timeS,
            Source source) {}

    public DisconnectionTimes(List<Row> rows) {
        this.rows = List.copyOf(rows);
    }

    /**
     * Longest time a circuit may stay live after an earth fault.
     *
     * @param system          earthing system in the mode judged; the island's may differ from the grid's. For IT the
     *                        time after a second fault
     * @param nominalVoltageV line to earth, r.m.s., a.c. [V], above 50
     * @return disconnection time [s]; for final circuits 0.4 in TN and 0.2 in TT at 230 V
     * @throws IllegalArgumentException if the voltage is 50 V or less, where none is needed, or beyond low voltage
     * @see "IEC 60364-4-41:2005+A1:2017, Table 41.1, 411.3.2.3 and 411.3.2.4"
     */
    public double limitS(EarthingSystem system, double nominalVoltageV, CircuitRole role) {
        return require(system, nominalVoltageV, role).timeS();
    }

    /** The row behind {@link #limitS}, with its source. */
    public Row require(EarthingSystem system, double nominalVoltageV, CircuitRole role) {
        for (Row row : rows)
            if (row.system() == system
                    && row.role() == role
                    && nominalVoltageV > row.aboveVoltageV()
                    && nominalVoltageV <= row.upToVoltageV()) return row;
        throw new IllegalArgumentException(
                "no disconnection time for %s, %s at %s V".formatted(system, role, nominalVoltageV));
    }
}
