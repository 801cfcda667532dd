package tideover.files.tables;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.network.AdiabaticTable;
import tideover.engine.network.Ampacity;
import tideover.engine.network.AmpacityTable;
import tideover.engine.network.ConductorTable;
import tideover.engine.network.HarmonicTable;
import tideover.engine.network.LoadedConductors;
import tideover.engine.network.ProtectiveConductorTable;
import tideover.engine.network.StartTable;
import tideover.engine.network.Surroundings;
import tideover.engine.protection.CircuitRole;
import tideover.engine.protection.DisconnectionTimes;
import tideover.engine.protection.Guarantee;
import tideover.engine.protection.LetThroughTable;
import tideover.engine.protection.RcdTimes;
import tideover.engine.protection.RcdTypes;
import tideover.engine.protection.Tables;
import tideover.engine.protection.TripCurves;
import tideover.engine.site.Curve;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.InstallationMethod;
import tideover.engine.site.Insulation;
import tideover.engine.site.Material;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.RcdDelay;
import tideover.engine.site.RcdType;
import tideover.engine.site.StartKind;
import tideover.engine.wiring.colour.Colour;
import tideover.engine.wiring.colour.ConductorColours;
import tideover.engine.wiring.colour.ConductorUse;
import tideover.engine.wiring.schedule.Ferrule;
import tideover.engine.wiring.schedule.FerruleTable;
import tideover.engine.wiring.schedule.WiringTables;

/** Reads the tables that come with the program. */
public final class TableFiles {

    private static final double A_PER_MILLI_A = 0.001;
    private static final double S_PER_H = 3600;
    private static final double MM_PER_M = 1000;

    /** Names of the CSV files, for whoever lists them. */
    public static final List<String> NAMES = List.of(
            "conductor-resistance.csv",
            "conductor-constants.csv",
            "ampacity.csv",
            "ampacity-temperature.csv",
            "ampacity-grouping.csv",
            "protective-conductor.csv",
            "adiabatic-k.csv",
            "breaker-tripping.csv",
            "fuse-gg-melting.csv",
            "fuse-gg-conventional.csv",
            "rcd-times.csv",
            "rcd-types.csv",
            "disconnection-times.csv",
            "breaker-let-through.csv",
            "fuse-gg-let-through.csv",
            "harmonic-reduction.csv",
            "start-multiples.csv",
            "conductor-colours.csv",
            "ferrules.csv");

    private TableFiles() {}

    /** All tables, read anew. */
    public static Tables load() {
        return new Tables(
                conductors(),
                ampacity(),
                new ProtectiveConductorTable(Table.read("protective-conductor.csv")
                        .map(row -> new ProtectiveConductorTable.Row(
                                row.number("lineUpToMm2"),
                                row.number("crossSectionMm2"),
                                row.number("crossSectionRatio"),
                                row.source()))),
                new AdiabaticTable(Table.read("adiabatic-k.csv")
                        .map(row -> new AdiabaticTable.Row(
                                row.word("use", AdiabaticTable.Use.class),
                                row.word("insulation", Insulation.class),
                                new AdiabaticTable.Factors(row.number("kCopper"), row.number("kAluminium"))))),
                tripCurves(),
                new RcdTimes(Table.read("rcd-times.csv")
                        .map(row -> new RcdTimes.Row(
                                row.word("delay", RcdDelay.class),
                                row.number("multipleRatio"),
                                row.number("earliestS"),
                                row.number("latestS"),
                                row.source()))),
                new RcdTypes(Table.read("rcd-types.csv")
                        .map(row -> new RcdTypes.Row(
                                row.word("type", RcdType.class),
                                row.number("toleratedSmoothDcMilliA") * A_PER_MILLI_A,
                                row.number("toleratedSmoothDcRatio"),
                                row.source()))),
                new DisconnectionTimes(Table.read("disconnection-times.csv").flatMap(TableFiles::disconnectionTimes)),
                letThrough(),
                new HarmonicTable(Table.read("harmonic-reduction.csv")
                        .map(row -> new HarmonicTable.Row(
                                row.number("aboveRatio"),
                                row.number("upToRatio"),
                                row.word("sizedOn", HarmonicTable.SizedOn.class),
                                row.number("factorRatio"),
                                row.source()))),
                new StartTable(Table.read("start-multiples.csv")
                        .map(row -> new StartTable.Row(
                                row.word("start", StartKind.class),
                                row.number("smallestRatio"),
                                row.number("largestRatio"),
                                row.number("shortestS"),
                                row.number("longestS"),
                                row.number("smallestPowerFactorRatio"),
                                row.number("largestPowerFactorRatio"),
                                row.source()))));
    }

    /** The tables wiring lists are made with, read anew. */
    public static WiringTables wiring() {
        return new WiringTables(
                new ConductorColours(Table.read("conductor-colours.csv")
                        .map(row -> new ConductorColours.Row(
                                row.text("country"),
                                row.word("use", ConductorUse.class),
                                year(row, "fromYear"),
                                year(row, "untilYear"),
                                colour(row, "colour").orElseThrow(),
                                colour(row, "endMark").orElse(null),
                                row.source()))),
                new FerruleTable(Table.read("ferrules.csv").flatMap(TableFiles::ferrules)));
    }

    private static @Nullable Integer year(Table.Row row, String column) {
        return row.text(column).isEmpty() ? null : Integer.valueOf((int) row.number(column));
    }

    private static Optional<Colour> colour(Table.Row row, String column) {
        return Colour.find(row.text(column));
    }

    private static List<FerruleTable.Row> ferrules(Table.Row row) {
        List<FerruleTable.Row> ferrules = new ArrayList<>();
        for (String lengthMm : row.text("sleeveLengthsMm").split(" "))
            ferrules.add(new FerruleTable.Row(
                    new Ferrule(row.number("crossSectionMm2"), Double.parseDouble(lengthMm) / MM_PER_M), row.source()));
        return ferrules;
    }

    private static LetThroughTable letThrough() {
        return new LetThroughTable(
                Table.read("breaker-let-through.csv")
                        .map(row -> new LetThroughTable.BreakerRow(
                                row.word("curve", Curve.class),
                                row.number("ratedAboveA"),
                                row.number("ratedUpToA"),
                                row.number("breakingCapacityA"),
                                (int) row.number("energyLimitingClass"),
                                row.number("fromMultipleRatio"),
                                row.number("letThroughA2s"),
                                row.source())),
                Table.read("fuse-gg-let-through.csv")
                        .map(row -> new LetThroughTable.FuseRow(
                                row.number("ratedCurrentA"),
                                row.number("smallestMeltingA2s"),
                                row.number("largestMeltingA2s"),
                                row.number("testSmallestMeltingA2s"),
                                row.number("testLargestOperatingA2s"),
                                row.source())));
    }

    private static ConductorTable conductors() {
        Map<String, Double> constants = new HashMap<>();
        for (Table.Row row : Table.read("conductor-constants.csv").rows())
            constants.put(row.text("quantity"), row.number("value"));
        Map<Material, Double> zeroResistanceDegC = new EnumMap<>(Material.class);
        zeroResistanceDegC.put(Material.COPPER, require(constants, "zeroResistanceCopper"));
        zeroResistanceDegC.put(Material.ALUMINIUM, require(constants, "zeroResistanceAluminium"));
        return new ConductorTable(
                Table.read("conductor-resistance.csv")
                        .map(row -> new ConductorTable.Row(
                                row.word("material", Material.class),
                                row.number("crossSectionMm2"),
                                row.number("resistanceOhmPerKm"))),
                zeroResistanceDegC,
                new ConductorTable.Reactance(
                        require(constants, "reactance"), require(constants, "reactanceFromCrossSection")));
    }

    private static double require(Map<String, Double> constants, String quantity) {
        Double value = constants.get(quantity);
        if (value == null) throw new IllegalStateException("table conductor-constants.csv has no " + quantity);
        return value;
    }

    private static AmpacityTable ampacity() {
        return new AmpacityTable(
                Table.read("ampacity.csv")
                        .map(row -> new AmpacityTable.Row(
                                row.word("material", Material.class),
                                row.word("insulation", Insulation.class),
                                row.word("method", InstallationMethod.class),
                                row.word("loadedConductors", LoadedConductors.class),
                                row.number("crossSectionMm2"),
                                new Ampacity(row.number("currentA"), row.source()))),
                Table.read("ampacity-temperature.csv")
                        .map(row -> new AmpacityTable.Temperature(
                                row.word("medium", Surroundings.class),
                                row.word("insulation", Insulation.class),
                                row.number("ambientDegC"),
                                row.number("factorRatio"))),
                Table.read("ampacity-grouping.csv").flatMap(TableFiles::groupings));
    }

    private static List<AmpacityTable.Grouping> groupings(Table.Row row) {
        List<AmpacityTable.Grouping> groupings = new ArrayList<>();
        for (InstallationMethod method : row.words("methods", InstallationMethod.class))
            groupings.add(new AmpacityTable.Grouping(method, (int) row.number("circuits"), row.number("factorRatio")));
        return groupings;
    }

    private static List<DisconnectionTimes.Row> disconnectionTimes(Table.Row row) {
        List<DisconnectionTimes.Row> times = new ArrayList<>();
        for (EarthingSystem system : row.words("systems", EarthingSystem.class))
            times.add(new DisconnectionTimes.Row(
                    system,
                    row.word("role", CircuitRole.class),
                    row.number("aboveVoltageV"),
                    row.number("upToVoltageV"),
                    row.number("timeS"),
                    row.source()));
        return times;
    }

    private static TripCurves tripCurves() {
        return new TripCurves(
                Table.read("breaker-tripping.csv").flatMap(TableFiles::breakerPoints),
                Table.read("fuse-gg-melting.csv")
                        .map(row -> new TripCurves.FusePoint(
                                row.number("ratedCurrentA"),
                                row.word("melts", Guarantee.class),
                                row.number("timeS"),
                                row.number("currentA"),
                                row.source())),
                Table.read("fuse-gg-conventional.csv")
                        .map(row -> new TripCurves.FuseConventional(
                                row.number("ratedFromA"),
                                row.number("nonFusingRatio"),
                                row.number("fusingRatio"),
                                row.number("cableFusingRatio"),
                                row.number("timeH") * S_PER_H,
                                row.source())));
    }

    private static List<TripCurves.BreakerPoint> breakerPoints(Table.Row row) {
        List<TripCurves.BreakerPoint> points = new ArrayList<>();
        for (OvercurrentKind kind : row.words("devices", OvercurrentKind.class))
            for (Curve curve : row.words("curves", Curve.class))
                points.add(new TripCurves.BreakerPoint(
                        kind,
                        curve,
                        row.number("ratedAboveA"),
                        row.number("ratedUpToA"),
                        row.number("multipleRatio"),
                        row.word("trips", Guarantee.class),
                        row.number("timeS"),
                        row.source()));
        return points;
    }
}
