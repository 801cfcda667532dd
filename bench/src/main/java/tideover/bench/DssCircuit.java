package tideover.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import tideover.engine.network.flow.FourWireNetwork;
import tideover.engine.network.flow.Phasor;
import tideover.engine.network.flow.PowerLoad;
import tideover.engine.network.house.HouseNetwork;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Terminals;
import tideover.engine.site.ThingId;

/**
 * The network of a house as a circuit of OpenDSS, in as few elements as it allows: a bus for each place, a node for each
 * of its conductors, one reactor with a matrix for all conductors of a cable. Points joined without impedance are one
 * node there too.
 */
final class DssCircuit {

    /** Stands for a source without impedance, which OpenDSS does not know [Ω]. */
    private static final double IDEAL_OHM = 1e-7;

    /** Ties a dead part without any connection to earth to it, as our solver does: sound insulation [Ω]. */
    private static final double INSULATION_OHM = 1e8;

    private final HouseNetwork house;
    private final FourWireNetwork network;
    private final int[] joined;
    private final String[] buses;
    private final int[] numbers;
    private final StringBuilder text = new StringBuilder();
    private int elements;

    DssCircuit(HouseNetwork house) {
        this.house = house;
        network = house.network();
        joined = new int[network.pointCount()];
        buses = new String[network.pointCount()];
        numbers = new int[network.pointCount()];
        Arrays.setAll(joined, point -> point);
        for (int branch = 0; branch < network.branchCount(); branch++)
            if (isJoint(branch)) join(joined, network.from(branch), network.to(branch));
        buses[leader(FourWireNetwork.EARTH)] = "earth";
        name();
    }

    private boolean isJoint(int branch) {
        return network.ohm(branch).magnitude() == 0 && network.emfV(branch).magnitude() == 0;
    }

    private int leader(int point) {
        return leader(joined, point);
    }

    private static int leader(int[] joined, int point) {
        int at = point;
        while (joined[at] != at) at = joined[at];
        return at;
    }

    /** Earth is point 0 and stays the leader of what it is joined with. */
    private static void join(int[] joined, int one, int two) {
        int a = leader(joined, one);
        int b = leader(joined, two);
        joined[Math.max(a, b)] = Math.min(a, b);
    }

    private void name() {
        List<ThingId> places = new ArrayList<>(List.of(ThingId.SUPPLY));
        house.installation().all(Fed.class).forEach(fed -> places.add(fed.id()));
        for (ThingId place : places) {
            int number = 0;
            for (Terminals side : Terminals.values())
                for (Conductor conductor : Conductor.values()) {
                    boolean none = place.equals(ThingId.SUPPLY) && side == Terminals.INCOMING;
                    int point = none ? -1 : house.point(place, side, conductor);
                    if (point >= 0 && buses[leader(point)] == null) set(point, place.text(), ++number);
                }
        }
        for (int point = 0; point < network.pointCount(); point++)
            if (buses[leader(point)] == null) set(point, "point-" + point, 1);
    }

    private void set(int point, String bus, int number) {
        buses[leader(point)] = bus;
        numbers[leader(point)] = number;
    }

    private String bus(int point) {
        return buses[leader(point)];
    }

    private int number(int point) {
        return numbers[leader(point)];
    }

    /** The node of a point as OpenDSS names it; earth is none. */
    String node(int point) {
        return bus(point) + "." + number(point);
    }

    /**
     * The circuit with loads that follow one set of powers after the other.
     *
     * @param sets of all loads
     */
    String text(LoadChanges.Powers[] sets) {
        text.setLength(0);
        line("clear");
        line("set defaultbasefrequency=50");
        line("new circuit.house bus1=unused basekv=0.4 phases=1");
        Map<String, List<Integer>> cables = new LinkedHashMap<>();
        for (int branch = 0; branch < network.branchCount(); branch++) {
            if (isJoint(branch) || leader(network.from(branch)) == leader(network.to(branch))) continue;
            if (network.emfV(branch).magnitude() > 0) source(branch);
            else
                cables.computeIfAbsent(
                                bus(network.from(branch)) + " " + bus(network.to(branch)), ends -> new ArrayList<>())
                        .add(branch);
        }
        cables.values().forEach(this::cable);
        insulate();
        for (int load = 0; load < network.loadCount(); load++) load(load, sets);
        return text.toString();
    }

    private void line(String pattern, Object... values) {
        text.append(String.format(Locale.ROOT, pattern, values)).append('\n');
    }

    private String nodes(List<Integer> points) {
        StringBuilder nodes = new StringBuilder(bus(points.get(0)));
        for (int point : points) nodes.append('.').append(number(point));
        return nodes.toString();
    }

    private void source(int branch) {
        Phasor emfV = network.emfV(branch);
        Phasor ohm = network.ohm(branch);
        double r = ohm.magnitude() == 0 ? IDEAL_OHM : ohm.real();
        line(
                "new vsource.e%d phases=1 bus1=%s bus2=%s basekv=%s pu=1 angle=%s r1=%s x1=%s r0=%s x0=%s",
                ++elements,
                node(network.to(branch)),
                node(network.from(branch)),
                emfV.magnitude() / 1000,
                emfV.angleDeg(),
                r,
                ohm.imaginary(),
                r,
                ohm.imaginary());
    }

    private void cable(List<Integer> branches) {
        line(
                "new reactor.e%d phases=%d bus1=%s bus2=%s rmatrix=[%s] xmatrix=[%s]",
                ++elements,
                branches.size(),
                nodes(branches.stream().map(network::from).toList()),
                nodes(branches.stream().map(network::to).toList()),
                diagonal(branches.stream().map(b -> network.ohm(b).real()).toList()),
                diagonal(branches.stream().map(b -> network.ohm(b).imaginary()).toList()));
    }

    private void insulate() {
        int[] connected = joined.clone();
        for (int branch = 0; branch < network.branchCount(); branch++)
            join(connected, network.from(branch), network.to(branch));
        for (int point = 1; point < network.pointCount(); point++)
            if (connected[point] == point)
                line("new reactor.e%d phases=1 bus1=%s bus2=earth.0 r=%s x=0", ++elements, node(point), INSULATION_OHM);
    }

    /** Rows of a lower triangle. */
    private static String diagonal(List<Double> values) {
        StringBuilder rows = new StringBuilder();
        for (int i = 0; i < values.size(); i++)
            rows.append(i == 0 ? "" : "|").append("0 ".repeat(i)).append(values.get(i));
        return rows.toString();
    }

    private void load(int number, LoadChanges.Powers[] sets) {
        PowerLoad load = network.load(number);
        if (!bus(load.from()).equals(bus(load.to())))
            throw new IllegalStateException("a load between %s and %s".formatted(node(load.from()), node(load.to())));
        StringBuilder kw = new StringBuilder();
        StringBuilder kvar = new StringBuilder();
        for (LoadChanges.Powers set : sets) {
            kw.append(set.powerW[number] / 1000).append(' ');
            kvar.append(set.reactiveVar[number] / 1000).append(' ');
        }
        line("new loadshape.s%d npts=%d interval=1 useactual=yes mult=[%s] qmult=[%s]", number, sets.length, kw, kvar);
        line(
                "new load.l%d phases=1 bus1=%s kv=%s kw=%s kvar=%s model=%d vminpu=0.7 vlowpu=0.5 vmaxpu=1.5 daily=s%d",
                number,
                nodes(List.of(load.from(), load.to())),
                load.ratedVoltageV() / 1000,
                load.powerW() / 1000,
                load.reactiveVar() / 1000,
                load.impedanceRatio() == 1 ? 2 : 1,
                number);
    }
}
