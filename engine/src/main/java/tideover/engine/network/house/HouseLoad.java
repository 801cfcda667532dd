package tideover.engine.network.house;

import java.util.List;
import java.util.Optional;
import tideover.engine.network.flow.PowerLoad;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.LoadKind;
import tideover.engine.site.Terminals;

/**
 * What one thing draws or feeds on one line.
 *
 * @param thing         a circuit, or an inverter that follows
 * @param line          on which line
 * @param powerW        active power at nominal voltage [W]; negative feeds
 * @param reactiveVar   reactive power at nominal voltage [var]; positive lags
 * @param nominalVoltageV line to neutral [V]
 * @param behaviour     at another voltage
 */
public record HouseLoad(
        Fed thing, Conductor line, double powerW, double reactiveVar, double nominalVoltageV, Behaviour behaviour) {

    /** What a load does at another voltage than nominal. */
    public enum Behaviour {
        /** Draws the same power: motors that run and everything with electronics. */
        CONSTANT_POWER,
        /** Draws less at a lower voltage: heaters, and motors that do not turn yet. */
        IMPEDANCE
    }

    /** A load that behaves as its kind does. */
    public HouseLoad(Fed thing, Conductor line, double powerW, double reactiveVar, double nominalVoltageV) {
        this(thing, line, powerW, reactiveVar, nominalVoltageV, usual(thing));
    }

    /** What it is in a network: to neutral, where there is none to the next line; nothing where the thing has no voltage. */
    Optional<PowerLoad> in(HouseNetwork house) {
        int from = house.point(thing.id(), Terminals.OUTGOING, line);
        if (from < 0) return Optional.empty();
        int to = house.neutral(thing.id());
        double voltageV = nominalVoltageV;
        if (to < 0) {
            List<Conductor> lines = house.installation().lines(thing.id());
            int next = (lines.indexOf(line) + 1) % lines.size();
            // Between two lines there is one load, not one each way.
            if (lines.size() == 1 || lines.size() == 2 && next == 0) return Optional.empty();
            to = house.point(thing.id(), Terminals.OUTGOING, lines.get(next));
            voltageV = Math.sqrt(3) * nominalVoltageV;
            if (to < 0) return Optional.empty();
        }
        double twoLines = voltageV != nominalVoltageV
                        && house.installation().lines(thing.id()).size() == 2
                ? Math.sqrt(3)
                : 1;
        return Optional.of(
                behaviour == Behaviour.IMPEDANCE
                        ? PowerLoad.impedance(from, to, twoLines * powerW, twoLines * reactiveVar, voltageV)
                        : PowerLoad.constantPower(from, to, twoLines * powerW, twoLines * reactiveVar, voltageV));
    }

    /** Heaters are impedances, all else draws the same power (common practice). */
    private static Behaviour usual(Fed thing) {
        LoadKind kind = thing instanceof Circuit circuit && circuit.load() != null
                ? circuit.load().kind()
                : null;
        return kind == LoadKind.COOKING || kind == LoadKind.WATER_HEATER || kind == LoadKind.SAUNA
                ? Behaviour.IMPEDANCE
                : Behaviour.CONSTANT_POWER;
    }
}
