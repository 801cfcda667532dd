package tideover.reference;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.AcceptedAdvice;
import tideover.engine.site.Battery;
import tideover.engine.site.BatteryPlace;
import tideover.engine.site.Board;
import tideover.engine.site.ByPass;
import tideover.engine.site.ByPassKind;
import tideover.engine.site.Cable;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Converter;
import tideover.engine.site.Curve;
import tideover.engine.site.EarthPlace;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Electrode;
import tideover.engine.site.EquipmentClass;
import tideover.engine.site.Evidence;
import tideover.engine.site.FeedDirection;
import tideover.engine.site.FeedbackContact;
import tideover.engine.site.FrequencyResponse;
import tideover.engine.site.GridOperator;
import tideover.engine.site.House;
import tideover.engine.site.Importance;
import tideover.engine.site.InstallationMethod;
import tideover.engine.site.Insulation;
import tideover.engine.site.Inverter;
import tideover.engine.site.InverterRole;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Isolator;
import tideover.engine.site.IsolatorKind;
import tideover.engine.site.Load;
import tideover.engine.site.LoadKind;
import tideover.engine.site.Material;
import tideover.engine.site.Meter;
import tideover.engine.site.MeterConnection;
import tideover.engine.site.MeterRole;
import tideover.engine.site.NeutralEarthLink;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.NeutralRule;
import tideover.engine.site.Notice;
import tideover.engine.site.Origin;
import tideover.engine.site.OvercurrentDevice;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.OverloadPoint;
import tideover.engine.site.Place;
import tideover.engine.site.Plan;
import tideover.engine.site.ProtectiveDevice;
import tideover.engine.site.PvArray;
import tideover.engine.site.RcdDelay;
import tideover.engine.site.RcdGroup;
import tideover.engine.site.RcdType;
import tideover.engine.site.ResidualDevice;
import tideover.engine.site.RestPosition;
import tideover.engine.site.Site;
import tideover.engine.site.StartKind;
import tideover.engine.site.StayOn;
import tideover.engine.site.Supply;
import tideover.engine.site.SupplyLines;
import tideover.engine.site.SurgeProtection;
import tideover.engine.site.SwitchKind;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;

/**
 * Random houses a site file can hold: one or three lines, TT, TN-S or TN-C-S, boards and RCD groups, any arrangement of
 * inverters and control wiring, with and without plan, some with hardly a fact missing and some with most. Wiring is mostly sensible and
 * sometimes not; only what the reader would refuse never occurs. The same seed gives the same house.
 */
public final class GeneratedSites {
    private static final FieldTable FIELDS = FieldTable.load();
    private static final List<Conductor> LINES = List.of(Conductor.L1, Conductor.L2, Conductor.L3);

    private final long seed;
    private final SplittableRandom random;
    /** For facts that came later: the houses drawn before stay as they were. */
    private final SplittableRandom later;

    private final List<Thing> house = new ArrayList<>();
    private final List<Thing> plan = new ArrayList<>();
    private final List<ThingId> removed = new ArrayList<>();
    private final List<ThingId> feeders = new ArrayList<>();
    private final boolean three;
    private final EarthingSystem earthing;

    private GeneratedSites(long seed) {
        this.seed = seed;
        random = new SplittableRandom(seed);
        later = new SplittableRandom(~seed);
        three = random.nextBoolean();
        earthing = pick(EarthingSystem.TT, EarthingSystem.TN_S, EarthingSystem.TN_C_S);
    }

    /** This many houses, from seed 1 on. */
    public static Stream<Site> sites(int count) {
        return Stream.iterate(1L, seed -> seed + 1).limit(count).map(GeneratedSites::site);
    }

    /** The house of a seed. */
    public static Site site(long seed) {
        return new GeneratedSites(seed).build();
    }

    private Site build() {
        ThingId panel = feeder("meter-panel");
        boolean splitAtPanel = random.nextBoolean();
        house.add(new Board(
                panel,
                "Meter panel",
                ThingId.SUPPLY,
                null,
                incoming(),
                cable(),
                null,
                null,
                63.0,
                63.0,
                25000.0,
                SurgeProtection.TYPE_1_2,
                4,
                "Cellar"));
        ThingId meter = feeder("meter");
        house.add(new Meter(
                meter,
                "Meter",
                panel,
                null,
                splitAtPanel ? all() : incoming(),
                null,
                null,
                MeterRole.OPERATOR,
                MeterConnection.DIRECT,
                65.0,
                random.nextBoolean(),
                pick(panel, null),
                1.0,
                1.0));
        ThingId main = feeder("main-board");
        house.add(board(main, meter));
        for (int i = random.nextInt(3); i > 0; i--) house.add(board(feeder("sub-board-" + i), main));
        for (int i = random.nextInt(4); i > 0; i--) {
            ThingId from = any();
            house.add(new RcdGroup(feeder("rcd-" + i), "RCD", from, null, all(), null, null, rcd()));
        }
        int circuits = random.nextInt(1, 14);
        for (int i = 1; i <= circuits; i++) house.add(circuit(i, circuits));
        for (int i = random.nextInt(3); i > 0; i--)
            house.add(new Electrode(id("electrode-" + i), "Electrode", pick(EarthPlace.values()), between(0.5, 200)));
        if (random.nextInt(3) == 0) house.add(inverter("old-inverter", InverterRole.GRID_FOLLOWING, any(), all()));
        if (random.nextInt(6) > 0) plan(panel, meter, main);

        Supply supply = new Supply(
                "House connection",
                earthing,
                three ? SupplyLines.THREE : SupplyLines.ONE,
                230.0,
                new OvercurrentDevice(OvercurrentKind.FUSE, null, pick(35.0, 50.0, 63.0), 50000.0, null, null, null),
                between(0.1, 2),
                between(300, 6000),
                between(0.5, 5),
                earthing == EarthingSystem.TN_C_S ? (splitAtPanel ? panel : meter) : null);
        Site site = new Site(
                new House(
                        new Place(
                                "Site",
                                pick("DE", "AT", "GB", "AU"),
                                between(-60, 60),
                                between(-180, 180),
                                between(0, 2000),
                                "Europe/Berlin"),
                        new GridOperator("Operator", pick(NeutralRule.values()), List.of("Ask first")),
                        supply,
                        ordered(house)),
                new Plan(ordered(plan), removed, accepted(main)),
                evidence());
        return GeneratedControl.wired(forgetful(site), new SplittableRandom(Long.reverse(seed)));
    }

    private void plan(ThingId panel, ThingId meter, ThingId main) {
        ThingId fuse = feeder("backup-fuse");
        plan.add(new ProtectiveDevice(
                fuse,
                "Back-up fuse",
                meter,
                null,
                all(),
                null,
                new OvercurrentDevice(OvercurrentKind.FUSE, null, pick(25.0, 35.0, 50.0), 50000.0, null, null, null)));
        ThingId gridBoard = feeder("grid-board");
        plan.add(board(gridBoard, meter));
        ThingId own = id("inverter-1");
        boolean builtIn = random.nextInt(4) == 0;
        ThingId islandingSwitch = feeder("islanding-switch");
        plan.add(new IslandingSwitch(
                islandingSwitch,
                "Islanding switch",
                fuse,
                null,
                all(),
                cable(),
                null,
                pick(SwitchKind.values()),
                random.nextInt(1, 5),
                pick(40.0, 63.0),
                pick(35.0, 50.0),
                10000.0,
                pick(FeedbackContact.values()),
                pick(RestPosition.values()),
                builtIn ? own : null,
                List.of("1", "2")));
        plan.add(change(main, pick(islandingSwitch, fuse)));
        int units = three && random.nextInt(4) == 0 ? 3 : 1;
        for (int i = 1; i <= units; i++) {
            List<Conductor> conductors = units == 1 ? all() : List.of(LINES.get(i - 1), Conductor.N, Conductor.PE);
            plan.add(inverter(
                    "inverter-" + i, InverterRole.GRID_FORMING, pick(main, islandingSwitch, gridBoard), conductors));
        }
        if (random.nextBoolean()) plan.add(inverter("follower", InverterRole.GRID_FOLLOWING, any(), all()));
        if (random.nextBoolean())
            plan.add(new NeutralEarthSwitch(
                    id("earth-switch"),
                    "Neutral-earth switch",
                    pick(main, islandingSwitch),
                    ThingId.MAIN_EARTH,
                    pick(FeedbackContact.values()),
                    pick(RestPosition.values()),
                    null));
        if (random.nextInt(4) == 0)
            plan.add(new NeutralEarthLink(id("link"), "Link", any(), pick(ThingId.MAIN_EARTH, panel)));
        if (random.nextBoolean())
            plan.add(new ByPass(
                    id("by-pass"),
                    "By-pass",
                    pick(ByPassKind.values()),
                    pick(fuse, meter),
                    pick(islandingSwitch, main),
                    random.nextInt(1, 5)));
        plan.add(new Battery(
                id("battery"),
                "Battery",
                List.of(own),
                between(2000, 20000),
                5000.0,
                5000.0,
                pickLater(BatteryPlace.values()),
                "Cellar"));
        plan.add(new PvArray(id("pv"), "Roof", own, between(1000, 15000), between(0, 360), between(0, 90)));
        for (ThingId source : List.of(ThingId.SUPPLY, own, id("battery"), id("pv")))
            if (random.nextInt(4) > 0)
                plan.add(new Isolator(
                        id("isolator-" + source),
                        "Isolator",
                        source,
                        pick(IsolatorKind.values()),
                        random.nextBoolean(),
                        "Cellar"));
        for (ThingId place : List.of(ThingId.SUPPLY, meter, main))
            if (random.nextBoolean()) plan.add(new Notice(id("notice-" + place), "Two sources", place));
        for (Thing thing : house)
            if (thing instanceof Circuit circuit) {
                int fate = random.nextInt(6);
                if (fate == 0) plan.add(moved(circuit.id(), gridBoard));
                if (fate == 1) removed.add(circuit.id());
            }
        // What shares a neutral with a removed circuit would have to say so anew.
        house.replaceAll(thing -> thing instanceof Circuit circuit ? unshared(circuit) : thing);
    }

    private Board board(ThingId id, ThingId from) {
        return new Board(
                id,
                "Board",
                from,
                null,
                all(),
                cable(),
                protection(),
                random.nextInt(4) == 0 ? rcd() : null,
                63.0,
                63.0,
                10000.0,
                pick(SurgeProtection.values()),
                random.nextInt(12),
                "Hall");
    }

    /** A planned change states only what changes. */
    private static Board change(ThingId id, ThingId from) {
        return new Board(id, null, from, null, null, null, null, null, null, null, null, null, null, null);
    }

    private Circuit circuit(int number, int of) {
        List<Conductor> conductors = three && random.nextInt(5) == 0
                ? all()
                : List.of(
                                three ? pick(LINES) : Conductor.L1,
                                pick(Conductor.N, Conductor.N, Conductor.PE),
                                Conductor.PE)
                        .stream()
                        .distinct()
                        .toList();
        List<ThingId> shared = number == 1 && of > 1 && random.nextBoolean() ? List.of(id("circuit-2")) : null;
        return new Circuit(
                id("circuit-" + number),
                pick("Sockets", "Lights", "Oven, \"kitchen\"", "Küche: Herd"),
                any(),
                pick(any(), null, null, null),
                conductors,
                cable(),
                protection(),
                random.nextInt(4) == 0 ? rcd() : null,
                load(),
                shared,
                pick(Importance.values()),
                pick(StayOn.values()),
                between(0.2, 5),
                random.nextInt(1960, 2026),
                "2008");
    }

    private static Circuit moved(ThingId id, ThingId to) {
        return new Circuit(id, null, to, null, null, null, null, null, null, null, null, null, null, null, null);
    }

    private Circuit unshared(Circuit circuit) {
        return circuit.sharedNeutralWith() == null
                        || circuit.sharedNeutralWith().stream().noneMatch(removed::contains)
                ? circuit
                : new Circuit(
                        circuit.id(),
                        circuit.designation(),
                        circuit.fedFrom(),
                        circuit.neutralFrom(),
                        circuit.conductors(),
                        circuit.cable(),
                        circuit.protection(),
                        circuit.rcd(),
                        circuit.load(),
                        null,
                        circuit.importance(),
                        circuit.stayOn(),
                        circuit.loopImpedanceOhm(),
                        circuit.year(),
                        circuit.edition());
    }

    private Inverter inverter(String name, InverterRole role, ThingId from, List<Conductor> conductors) {
        double ratedVa = between(1000, 12000);
        return new Inverter(
                id(name),
                "Inverter",
                from,
                null,
                conductors,
                cable(),
                protection(),
                random.nextInt(3) == 0 ? rcd() : null,
                role,
                ratedVa,
                between(4, 25),
                List.of(new OverloadPoint(between(1.1, 2), between(0.1, 60))),
                between(5, 60),
                between(0.02, 1),
                between(0.02, 1),
                between(0, 100),
                230.0,
                50.0,
                ratedVa,
                pickLater(0.0, 3000.0, 12000.0, null),
                pickLater(FrequencyResponse.NONE, FrequencyResponse.THROTTLES, null),
                pick(RcdType.values()),
                pick(0.03, 0.3));
    }

    private Load load() {
        return new Load(
                pick(LoadKind.values()),
                between(10, 12000),
                between(0.5, 1),
                pick(between(0, 30), null),
                pick(Converter.values()),
                pick(EquipmentClass.values()),
                pickLater(0.0, 0.1, 0.25, 0.4, 0.6, null),
                pick(StartKind.values()),
                between(1, 8),
                between(0.1, 5),
                pick(RcdType.A, RcdType.B, null));
    }

    private Cable cable() {
        return new Cable(
                between(0.5, 120),
                pick(1.5, 2.5, 4.0, 6.0, 10.0, 16.0),
                pick(6.0, null),
                pick(6.0, null),
                pick(Material.values()),
                pick(Insulation.values()),
                pick(InstallationMethod.values()),
                random.nextInt(1, 9),
                between(-5, 55));
    }

    private OvercurrentDevice protection() {
        OvercurrentKind kind = pick(OvercurrentKind.values());
        return new OvercurrentDevice(
                kind,
                kind == OvercurrentKind.FUSE ? null : pick(Curve.values()),
                pick(6.0, 10.0, 13.0, 16.0, 20.0, 25.0, 32.0, 63.0),
                pick(6000.0, 10000.0),
                kind == OvercurrentKind.FUSE ? null : pickLater(1, 2, 3, null),
                kind == OvercurrentKind.FUSE ? null : pickLater(63.0, 100.0, null),
                kind == OvercurrentKind.FUSE ? null : pickLater(10000.0, 25000.0, null));
    }

    private ResidualDevice rcd() {
        return new ResidualDevice(
                pick(RcdType.values()),
                pick(RcdDelay.values()),
                pick(0.01, 0.03, 0.1, 0.3),
                pick(25.0, 40.0, 63.0),
                pick(FeedDirection.values()));
    }

    private List<AcceptedAdvice> accepted(ThingId main) {
        return random.nextInt(3) == 0
                ? List.of(new AcceptedAdvice("rcd.selectivity", main, "The customer knows."))
                : List.of();
    }

    private List<Evidence> evidence() {
        List<Evidence> evidence = new ArrayList<>();
        if (random.nextInt(4) > 0)
            evidence.add(new Evidence(Evidence.HOUSE, Origin.READ, "survey", LocalDate.of(2026, 10, 12), null));
        for (Thing thing : house)
            if (random.nextInt(3) == 0)
                evidence.add(new Evidence(thing.id().text(), pick(Origin.values()), null, null, "photo 7"));
        evidence.add(new Evidence("supply.loopImpedanceOhm", Origin.MEASURED, "tester", null, null));
        return evidence;
    }

    /** Takes facts away; what has a default stays, since a reader would fill it in again. */
    private Site forgetful(Site whole) {
        Site site = whole;
        int oneIn = pick(1000, 20, 6, 3);
        List<Thing> things = new ArrayList<>(whole.house().things());
        things.addAll(whole.plan().things());
        things.add(whole.house().place());
        things.add(whole.house().gridOperator());
        things.add(whole.house().supply());
        for (Thing thing : things) {
            String section = ThingKind.sectionOf(thing);
            for (Field field : FIELDS.all()) {
                if (!field.path().startsWith(section + ".") || random.nextInt(oneIn) > 0) continue;
                String path = field.path().substring(section.length() + 1);
                boolean forgettable = field.kind() != FieldKind.ID
                        && field.defaultValue() == null
                        && !path.startsWith("overload.")
                        && (path.indexOf('.') < 0
                                || current(site, thing).value(path.substring(0, path.indexOf('.'))) != null);
                if (forgettable) site = site.with(thing.fact(path), null);
            }
        }
        return site;
    }

    private static Thing current(Site site, Thing thing) {
        for (List<Thing> side : List.of(site.plan().things(), site.house().things()))
            for (Thing other : side) if (other.id().equals(thing.id())) return other;
        return ThingKind.sectionOf(thing).equals("supply") ? site.house().supply() : thing;
    }

    private static List<Thing> ordered(List<Thing> things) {
        List<Thing> ordered = new ArrayList<>(things);
        ordered.sort(Comparator.comparing(ThingKind::of));
        return ordered;
    }

    /** From the network: in TN-C-S with a PEN, in TT without a PE. */
    private List<Conductor> incoming() {
        if (earthing == EarthingSystem.TN_S) return all();
        List<Conductor> conductors = new ArrayList<>(three ? LINES : List.of(Conductor.L1));
        conductors.add(earthing == EarthingSystem.TT ? Conductor.N : Conductor.PEN);
        return conductors;
    }

    private List<Conductor> all() {
        return three
                ? List.of(Conductor.L1, Conductor.L2, Conductor.L3, Conductor.N, Conductor.PE)
                : List.of(Conductor.L1, Conductor.N, Conductor.PE);
    }

    private static ThingId id(String text) {
        return new ThingId(text);
    }

    /** A thing from which later ones may be fed. */
    private ThingId feeder(String text) {
        ThingId id = id(text);
        feeders.add(id);
        return id;
    }

    /** A thing made before: so that no circle can come about. */
    private ThingId any() {
        return feeders.get(random.nextInt(feeders.size()));
    }

    private double between(double low, double high) {
        return Math.round(random.nextDouble(low, high) * 1000) / 1000.0;
    }

    @SafeVarargs
    private <T> @Nullable T pick(@Nullable T... from) {
        return from[random.nextInt(from.length)];
    }

    @SafeVarargs
    private <T> @Nullable T pickLater(@Nullable T... from) {
        return from[later.nextInt(from.length)];
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }
}
