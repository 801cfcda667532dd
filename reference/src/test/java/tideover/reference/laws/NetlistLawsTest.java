package tideover.reference.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.installation.View;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Site;
import tideover.engine.site.Terminals;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;

/** Laws of nature of every netlist, looked at with a flood of our own over its edges, not with the traversals it offers. */
class NetlistLawsTest {

    private static final List<Conductor> LINES = List.of(Conductor.L1, Conductor.L2, Conductor.L3);

    static List<Path> all() {
        return Houses.all();
    }

    static List<Path> sound() {
        List<Path> sound = new ArrayList<>(List.of(Houses.TOWN_HOUSE, Houses.FARMHOUSE, Houses.TERRACE));
        sound.addAll(Houses.yamlBelow(Houses.EXAMPLES.resolve("arrangements")));
        return sound;
    }

    @ParameterizedTest
    @MethodSource("sound")
    void whileIslandedNoLineOfTheIslandTouchesTheGrid(Path house) {
        Installation installation = Installation.of(Houses.read(house));
        for (OperatingState state : List.of(OperatingState.ISLAND_GRID_DEAD, OperatingState.ISLAND_GRID_WAITING)) {
            View view = installation.in(state);
            List<Integer> grid = terminals(installation, ThingId.SUPPLY);
            BitSet reached = flood(installation, view, island(installation), Edge::carriesLine);
            assertThat(grid).as("lines of the grid in %s", state).noneMatch(reached::get);
        }
    }

    /** Over links, protective conductors and earth it does: so it must be those alone that are left out. */
    @ParameterizedTest
    @MethodSource("sound")
    void withTheNeutralSwitchedOnlyLinkAndEarthJoinIslandAndGrid(Path house) {
        Installation installation = Installation.of(Houses.read(house));
        View view = installation.in(OperatingState.ISLAND_GRID_DEAD);
        List<Integer> start = List.of(installation.neutralTerminal(
                installation.formingInverters().get(0).id()));
        BitSet neutrals = flood(installation, view, start, edge -> edge.carriesLine() || edge.carriesNeutral());
        BitSet everything = flood(installation, view, start, edge -> true);
        int grid = installation.neutralTerminal(ThingId.SUPPLY);
        assertThat(neutrals.get(grid)).isEqualTo(!isNeutralSwitched(installation));
        assertThat(everything.get(grid)).isTrue();
    }

    @ParameterizedTest
    @MethodSource("all")
    void circuitStaysOnExactlyIfAnIslandSourceReachesIt(Path house) {
        assertThat(assertStaysOnIfReached(Houses.read(house))).isPositive();
    }

    @Test
    void soItIsInHousesDrawnBySeed() {
        assertThat(GeneratedSites.sites(300)
                        .mapToInt(NetlistLawsTest::assertStaysOnIfReached)
                        .sum())
                .isPositive();
    }

    private static int assertStaysOnIfReached(Site site) {
        Installation installation = Installation.of(site);
        View dead = installation.in(OperatingState.ISLAND_GRID_DEAD);
        BitSet reached = flood(installation, dead, island(installation), Edge::carriesLine);
        int staying = 0;
        for (Circuit circuit : installation.circuits()) {
            boolean live = terminals(installation, circuit.id()).stream().anyMatch(reached::get);
            assertThat(installation.staysOn(circuit)).as(circuit.id().text()).isEqualTo(live);
            assertThat(dead.findSource(circuit).isPresent())
                    .as(circuit.id().text())
                    .isEqualTo(live);
            if (live) staying++;
        }
        return staying;
    }

    @ParameterizedTest
    @MethodSource("all")
    void eachPathIsAChainOfClosedEdgesFromItsSource(Path house) {
        assertThat(assertChains(Houses.read(house))).isGreaterThan(20);
    }

    @Test
    void eachPathIsAChainInHousesDrawnBySeedToo() {
        assertThat(GeneratedSites.sites(300)
                        .mapToInt(NetlistLawsTest::assertChains)
                        .sum())
                .isGreaterThan(1000);
    }

    private static int assertChains(Site site) {
        Installation installation = Installation.of(site);
        int paths = 0;
        for (OperatingState state : installation.states()) {
            View view = installation.in(state);
            for (Thing thing : installation.things()) {
                if (!(thing instanceof Fed fed)) continue;
                for (ThingId source : view.sources()) {
                    for (Conductor line : view.liveLines(fed)) {
                        var path = view.findLinePath(source, fed.id(), line);
                        if (path.isEmpty()) continue;
                        paths++;
                        assertChain(
                                view,
                                path.get().edges(),
                                Edge::carriesLine,
                                installation.node(source, Terminals.OUTGOING, line),
                                installation.node(fed.id(), Terminals.OUTGOING, line));
                    }
                    var neutral = view.findNeutralPath(source, fed.id());
                    if (neutral.isEmpty()) continue;
                    Conductor end = neutral.get().edges().isEmpty()
                                    || ends(installation, neutral.get().edges(), fed.id(), Conductor.N)
                            ? Conductor.N
                            : Conductor.PEN;
                    if (!source.equals(fed.id()))
                        assertChain(
                                view,
                                neutral.get().edges(),
                                Edge::carriesNeutral,
                                installation.neutralTerminal(source),
                                installation.node(fed.id(), Terminals.OUTGOING, end));
                }
            }
        }
        return paths;
    }

    /** No line has a way to another line, nor to a neutral, in any state: that would be a short circuit. */
    @ParameterizedTest
    @MethodSource("all")
    void linesStayApartFromOneAnotherAndFromNeutrals(Path house) {
        Installation installation = Installation.of(Houses.read(house));
        for (Edge edge : installation.edges())
            if (edge.carriesLine())
                assertThat(edge.from() % 12 % 6).as(edge.toString()).isEqualTo(edge.to() % 12 % 6);
        for (OperatingState state : installation.states()) {
            BitSet first = flood(
                    installation,
                    installation.in(state),
                    List.of(installation.node(ThingId.SUPPLY, Terminals.OUTGOING, Conductor.L1)),
                    Edge::carriesLine);
            assertThat(first.get(installation.node(ThingId.SUPPLY, Terminals.OUTGOING, Conductor.L2)))
                    .isFalse();
            assertThat(first.get(installation.neutralTerminal(ThingId.SUPPLY))).isFalse();
        }
    }

    /** Nothing is live in the dark, and the grid feeds everything when connected. */
    @ParameterizedTest
    @MethodSource("sound")
    void darkIsDarkAndConnectedIsFed(Path house) {
        Site site = Houses.read(house);
        Installation installation = Installation.of(site);
        for (Circuit circuit : installation.circuits()) {
            assertThat(installation.in(OperatingState.DARK).liveLines(circuit)).isEmpty();
            assertThat(installation.in(OperatingState.CONNECTED).findSource(circuit))
                    .contains(ThingId.SUPPLY);
            assertThat(installation.in(OperatingState.CONNECTED).isFed(circuit)).isTrue();
        }
    }

    private static boolean isNeutralSwitched(Installation installation) {
        for (IslandingSwitch device : installation.islandingSwitches()) {
            long lines = installation.lines(device.id()).size();
            if (device.poles() != null && device.poles() > lines) return true;
        }
        return false;
    }

    private static boolean ends(Installation installation, List<Edge> edges, ThingId thing, Conductor conductor) {
        int node = installation.node(thing, Terminals.OUTGOING, conductor);
        Edge last = edges.get(edges.size() - 1);
        return last.from() == node || last.to() == node;
    }

    private static void assertChain(View view, List<Edge> edges, Predicate<Edge> carries, int from, int to) {
        int at = from;
        for (Edge edge : edges) {
            if (!view.isClosed(edge) || !carries.test(edge) || at != edge.from() && at != edge.to())
                fail("no conducting way from node %s over %s", at, edge);
            at = edge.other(at);
        }
        assertThat(at).isEqualTo(to);
    }

    private static List<Integer> island(Installation installation) {
        List<Integer> nodes = new ArrayList<>();
        for (Inverter inverter : installation.formingInverters()) nodes.addAll(terminals(installation, inverter.id()));
        return nodes;
    }

    private static List<Integer> terminals(Installation installation, ThingId thing) {
        return LINES.stream()
                .map(line -> installation.node(thing, Terminals.OUTGOING, line))
                .toList();
    }

    private static BitSet flood(Installation installation, View view, List<Integer> start, Predicate<Edge> passable) {
        BitSet reached = new BitSet();
        Deque<Integer> next = new ArrayDeque<>(start);
        while (!next.isEmpty()) {
            int node = next.pop();
            if (reached.get(node)) continue;
            reached.set(node);
            for (Edge edge : installation.edges())
                if (view.isClosed(edge) && passable.test(edge) && (edge.from() == node || edge.to() == node))
                    next.push(edge.other(node));
        }
        return reached;
    }
}
