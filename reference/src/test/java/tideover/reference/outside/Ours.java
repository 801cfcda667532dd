package tideover.reference.outside;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import tideover.engine.network.AdiabaticTable;
import tideover.engine.network.ConductorTable;
import tideover.engine.network.LoadedConductors;
import tideover.engine.network.Surroundings;
import tideover.engine.protection.CircuitRole;
import tideover.engine.protection.Tables;
import tideover.engine.protection.TripCurve;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Curve;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.InstallationMethod;
import tideover.engine.site.Insulation;
import tideover.engine.site.Material;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.RcdDelay;
import tideover.files.rules.RuleBooks;
import tideover.files.tables.TableFiles;

/** What this program says where others have published a value: one method for each folder of published values. */
final class Ours {

    /** Line to neutral, the voltage of all published values here [V]. */
    private static final double NOMINAL_VOLTAGE_V = 230;

    /** Unit of the values of each folder, for print. */
    static final Map<String, String> UNITS = units();

    private static final Tables TABLES = TableFiles.load();

    private Ours() {}

    static double of(Published published) {
        ToDoubleFunction<Published> way = switch (published.folder()) {
            case "breaker-loops" -> Ours::largestLoopOhm;
            case "fuse-disconnection" -> Ours::fuseCurrentA;
            case "rcd-times" -> Ours::rcdTimeS;
            case "disconnection-times" -> Ours::disconnectionTimeS;
            case "conductor-resistance" -> Ours::resistanceOhmPerKm;
            case "temperature-of-resistance" -> Ours::resistanceRatio;
            case "ampacity" -> Ours::ampacityA;
            case "ampacity-temperature" -> Ours::temperatureRatio;
            case "worked-examples" -> Ours::example;
            default -> throw new IllegalArgumentException("no value of ours for " + published.folder());
        };
        return way.applyAsDouble(published);
    }

    private static Map<String, String> units() {
        Map<String, String> units = new LinkedHashMap<>();
        units.put("breaker-loops", "Ω");
        units.put("fuse-disconnection", "A");
        units.put("rcd-times", "s");
        units.put("disconnection-times", "s");
        units.put("conductor-resistance", "Ω/km");
        units.put("temperature-of-resistance", "");
        units.put("ampacity", "A");
        units.put("ampacity-temperature", "");
        units.put("worked-examples", "");
        return units;
    }

    private static double largestLoopOhm(Published row) {
        RuleBook rules = RuleBooks.load(row.text("book"));
        String factor = row.text("loop").equals("MEASURED_LOOP") ? "fault.measuredLoopFactor" : "fault.voltageFactor";
        double ia = breaker(row.word("curve", Curve.class), row.number("ratedCurrentA"))
                .currentForDisconnectionA(0.4);
        return rules.find(factor).orElseThrow().requireNumber() * NOMINAL_VOLTAGE_V / ia;
    }

    private static double fuseCurrentA(Published row) {
        return TABLES.tripCurves()
                .findFuse(row.number("ratedCurrentA"))
                .orElseThrow()
                .currentForDisconnectionA(row.number("timeS"));
    }

    private static double rcdTimeS(Published row) {
        RcdDelay delay = row.word("delay", RcdDelay.class);
        double multipleRatio = row.number("multipleRatio");
        return row.text("bound").equals("LATEST")
                ? TABLES.rcdTimes().latestS(delay, multipleRatio)
                : TABLES.rcdTimes().earliestS(delay, multipleRatio);
    }

    private static double disconnectionTimeS(Published row) {
        return TABLES.disconnectionTimes()
                .limitS(
                        row.word("system", EarthingSystem.class),
                        row.number("nominalVoltageV"),
                        row.word("role", CircuitRole.class));
    }

    private static double resistanceOhmPerKm(Published row) {
        return TABLES.conductors()
                .resistanceOhmPerKm(
                        row.word("material", Material.class),
                        row.number("crossSectionMm2"),
                        row.number("temperatureDegC"));
    }

    private static double resistanceRatio(Published row) {
        Material material = row.word("material", Material.class);
        ConductorTable conductors = TABLES.conductors();
        return conductors.resistanceOhmPerKm(material, 2.5, row.number("toDegC"))
                / conductors.resistanceOhmPerKm(material, 2.5, row.number("fromDegC"));
    }

    private static double ampacityA(Published row) {
        return TABLES.ampacity()
                .findInstalled(
                        row.word("material", Material.class),
                        row.word("insulation", Insulation.class),
                        row.word("method", InstallationMethod.class),
                        row.word("loadedConductors", LoadedConductors.class),
                        row.number("crossSectionMm2"),
                        1,
                        row.number("ambientDegC"))
                .orElseThrow()
                .currentA();
    }

    private static double temperatureRatio(Published row) {
        InstallationMethod method = switch (row.word("surroundings", Surroundings.class)) {
            case AIR -> InstallationMethod.C;
            case SOIL -> InstallationMethod.D2;
        };
        return TABLES.ampacity()
                .findTemperatureRatio(method, row.word("insulation", Insulation.class), row.number("ambientDegC"))
                .orElseThrow();
    }

    private static double example(Published row) {
        RuleBook iec = RuleBooks.load("IEC");
        return switch (row.text("example") + " " + row.text("quantity")) {
            case "WE02 longestCircuitM" -> {
                double loopOhmPerKm = TABLES.conductors().resistanceOhmPerKm(Material.ALUMINIUM, 50, 70)
                        + TABLES.conductors().resistanceOhmPerKm(Material.ALUMINIUM, 25, 70);
                double ia = breaker(Curve.B, 63).currentForDisconnectionA(5);
                yield 0.8 * NOMINAL_VOLTAGE_V / ia / loopOhmPerKm * 1000;
            }
            case "WE03 protectiveConductorMm2" ->
                AdiabaticTable.smallestMm2(
                        NOMINAL_VOLTAGE_V / 1.15,
                        0.4,
                        TABLES.adiabatic().k(Material.COPPER, Insulation.PVC, AdiabaticTable.Use.CORE));
            case "WE09 largestElectrodeOhm" ->
                iec.find("rcd.touchVoltageV").orElseThrow().requireNumber() / 0.03;
            case "B16 measuredCurrentA" ->
                breaker(Curve.B, 16).currentForDisconnectionA(0.4)
                        / iec.find("fault.measuredLoopFactor").orElseThrow().requireNumber();
            default -> NetworkExamples.of(row.text("example") + " " + row.text("quantity"));
        };
    }

    private static TripCurve breaker(Curve curve, double ratedCurrentA) {
        return TABLES.tripCurves()
                .findBreaker(OvercurrentKind.MCB, curve, ratedCurrentA)
                .orElseThrow();
    }
}
