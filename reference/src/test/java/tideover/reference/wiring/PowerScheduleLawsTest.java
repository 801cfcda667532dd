package tideover.reference.wiring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Edge.Part;
import tideover.engine.installation.Installation;
import tideover.engine.installation.control.ControlNet;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Meter;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.Site;
import tideover.engine.site.Status;
import tideover.engine.site.Terminals;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.schedule.CuttingList;
import tideover.engine.wiring.schedule.Laying;
import tideover.engine.wiring.schedule.PowerEnd;
import tideover.engine.wiring.schedule.PowerRow;
import tideover.engine.wiring.schedule.Schedules;
import tideover.engine.wiring.schedule.WiringTables;
import tideover.files.tables.TableFiles;
import tideover.reference.GeneratedSites;
import tideover.reference.Houses;

/** Laws of every power schedule, whatever the house: the netlist counted once more, not with the code that makes the rows. */
class PowerScheduleLawsTest {

    private static final WiringTables TABLES = TableFiles.wiring();
    private static final double ALLOWANCE_M = 0.4;

    static List<Path> all() {
        return Houses.all();
    }

    private static Schedules schedules(Installation installation) {
        return Schedules.of(installation, ControlNet.of(installation), TABLES, ALLOWANCE_M);
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyConductorTheJobTouchesIsListedOnceAndNoOther(Path house) {
        assertListedOnce(Installation.of(Houses.read(house)));
    }

    @Test
    void everyConductorTheJobTouchesIsListedOnceAlsoInHousesNobodyWouldBuild() {
        int rows = 0;
        for (int seed = 0; seed < 100; seed++) rows += assertListedOnce(Installation.of(GeneratedSites.site(seed)));
        assertThat(rows).isGreaterThan(1_500);
    }

    private static int assertListedOnce(Installation installation) {
        List<PowerRow> rows = schedules(installation).power().rows();
        List<String> listed = rows.stream()
                .filter(row -> row.part() == Part.FEED && !isMeasuring(row, installation))
                .map(row -> row.thing() + " " + row.conductor())
                .toList();
        List<String> touched = installation.edges().stream()
                .filter(edge -> edge.part() == Part.FEED && isTouched(edge.thing(), installation))
                .map(edge -> edge.thing().id() + " " + edge.conductor())
                .toList();
        assertThat(listed).containsExactlyInAnyOrderElementsOf(touched);
        assertThat(count(rows, Part.BY_PASS)).isEqualTo(2 * touched(installation, Part.BY_PASS));
        assertThat(count(rows, Part.LINK_SWITCH)).isEqualTo(2 * touched(installation, Part.LINK_SWITCH));
        assertThat(count(rows, Part.LINK)).isEqualTo(touched(installation, Part.LINK));
        assertThat(rows.stream().map(PowerRow::designation)).doesNotHaveDuplicates();
        return rows.size();
    }

    /** A measuring neutral is no edge of the netlist. It is a run of one wire to a meter. */
    private static boolean isMeasuring(PowerRow row, Installation installation) {
        return installation.find(row.thing()).orElseThrow() instanceof Meter
                && row.conductor() == Conductor.N
                && row.laying() == Laying.WIRE
                && row.lengthM() == null;
    }

    private static long count(List<PowerRow> rows, Part part) {
        return rows.stream().filter(row -> row.part() == part).count();
    }

    private static long touched(Installation installation, Part part) {
        return installation.edges().stream()
                .filter(edge -> edge.part() == part
                        && isTouched(edge.thing(), installation)
                        && !(edge.thing() instanceof NeutralEarthSwitch link && link.builtInto() != null))
                .count();
    }

    /** Told from the plan's own words: new, beginning at something new, or restated in how it is connected. */
    private static boolean isTouched(Thing thing, Installation installation) {
        if (thing instanceof Fed fed && isInside(fed, installation)) return false;
        if (installation.status(thing.id()) == Status.NEW) return true;
        if (thing instanceof Fed fed
                && Stream.of(fed.fedFrom(), fed.neutralFrom())
                        .filter(Objects::nonNull)
                        .anyMatch(begin -> installation.status(begin) == Status.NEW)) return true;
        return installation.site().plan().things().stream()
                .filter(stated -> stated.id().equals(thing.id()) && stated instanceof Fed)
                .map(Fed.class::cast)
                .anyMatch(stated -> stated.fedFrom() != null
                        || stated.neutralFrom() != null
                        || stated.conductors() != null
                        || stated.cable() != null
                        || stated.protection() != null
                        || stated.rcd() != null);
    }

    private static boolean isInside(Fed fed, Installation installation) {
        return fed.fedFrom() != null
                && installation.find(fed.fedFrom()).orElse(null) instanceof IslandingSwitch device
                && Objects.equals(device.builtInto(), fed.id());
    }

    @ParameterizedTest
    @MethodSource("all")
    void bothEndsAreTerminalsOfTheNetlistAndTheEdgeLiesBetweenThem(Path house) {
        Installation installation = Installation.of(Houses.read(house));
        for (PowerRow row : schedules(installation).power().rows()) {
            assertThat(isThere(row.from(), installation)).as("%s", row).isTrue();
            assertThat(isThere(row.to(), installation)).as("%s", row).isTrue();
            if (row.part() != Part.FEED || isMeasuring(row, installation)) continue;
            Edge edge = installation.findFeed(row.thing(), row.conductor()).orElseThrow();
            assertThat(edge.to()).isEqualTo(node(installation, row.to(), row.conductor()));
            assertThat(List.of(
                            node(installation, row.from(), Conductor.PEN),
                            node(installation, row.from(), row.conductor())))
                    .contains(edge.from());
        }
    }

    private static boolean isThere(PowerEnd end, Installation installation) {
        return end.thing().equals(ThingId.MAIN_EARTH)
                || installation.find(end.thing()).isPresent();
    }

    private static int node(Installation installation, PowerEnd end, Conductor conductor) {
        if (end.thing().equals(ThingId.MAIN_EARTH)) return installation.mainEarth();
        return installation.node(end.thing(), Objects.requireNonNull(end.side()), conductor);
    }

    @ParameterizedTest
    @MethodSource("all")
    void cuttingListIsTheSumOfWhatIsLaidAndTheAllowanceOfEachPiece(Path house) {
        Installation installation = Installation.of(Houses.read(house));
        Schedules schedules = schedules(installation);
        double expectedM = 0;
        List<String> seen = new ArrayList<>();
        for (PowerRow row : schedules.power().rows()) {
            // Cores of one cable are one piece.
            boolean isPiece = row.laying() == Laying.WIRE || row.laying() == Laying.CABLE && !seen.contains(row.run());
            seen.add(row.run());
            if (isPiece && row.lengthM() != null) expectedM += row.lengthM() + ALLOWANCE_M;
        }
        CuttingList power = CuttingList.of(
                schedules.power(), new tideover.engine.wiring.schedule.ControlSchedule(List.of()), ALLOWANCE_M);
        // Sums of some ten lengths of at most a hundred metres: rounding of doubles stays far below a micrometre.
        assertThat(power.sumM()).isCloseTo(expectedM, within(1e-9));
        int control = schedules.cutting().pieces().size() - power.pieces().size();
        assertThat(schedules.cutting().sumM()).isGreaterThanOrEqualTo(power.sumM() + control * ALLOWANCE_M - 1e-9);
    }

    @ParameterizedTest
    @MethodSource("all")
    void everyNewWireIsLabelledAtBothEnds(Path house) {
        Schedules schedules = schedules(Installation.of(Houses.read(house)));
        Set<String> labels = schedules.labels().labels().stream()
                .map(label -> label.at() + " " + label.text())
                .collect(Collectors.toSet());
        for (PowerRow row : schedules.power().rows())
            if (row.laying().isNew())
                assertThat(labels)
                        .contains(
                                row.from().thing() + " " + row.labelFrom(),
                                row.to().thing() + " " + row.labelTo());
    }

    @Test
    void theSameHouseGivesTheSameNames() {
        Site site = Houses.read(Houses.TOWN_HOUSE);
        assertThat(schedules(Installation.of(site)).power())
                .isEqualTo(schedules(Installation.of(site)).power());
    }

    @Test
    void sideIsThatOfTheTerminals() {
        Installation installation = Installation.of(Houses.read(Houses.TOWN_HOUSE));
        for (PowerRow row : schedules(installation).power().at(new ThingId("islanding-switch"))) {
            boolean begins = row.from().thing().equals(new ThingId("islanding-switch"));
            PowerEnd end = begins ? row.from() : row.to();
            boolean isPast = row.part() == Part.BY_PASS;
            if (!isPast) assertThat(end.side()).isEqualTo(begins ? Terminals.OUTGOING : Terminals.INCOMING);
        }
    }
}
