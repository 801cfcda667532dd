package tideover.reference.laws;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Outcome;
import tideover.engine.site.FactId;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.Site;
import tideover.engine.site.StartKind;
import tideover.reference.Houses;

/**
 * Where physics says that more of one thing can only be worse, it never turns a broken rule into a kept one, whatever the
 * rest of the house is like. The cases are drawn with a fixed seed; a law that met no broken and no kept rule says nothing
 * and fails.
 */
class MonotoneLawsTest {

    private static final int CASES = 80;
    private static final Path CHECKS = Path.of("src/test/resources/tideover/reference/checks");
    private static final Path HOUSE = CHECKS.resolve("house.yaml");
    private static final Path TT_HOUSE = CHECKS.resolve("tt-house.yaml");

    /** Standard sections [mm²], the largest first: thinner is worse. */
    private static final List<Object> SECTIONS = List.of(25.0, 16.0, 10.0, 6.0, 4.0, 2.5, 1.5);

    private static final List<Object> RCD_RATINGS = List.of(0.01, 0.03, 0.1, 0.3, 0.5);
    private static final List<Object> BREAKERS = List.of(6.0, 10.0, 13.0, 16.0, 20.0, 25.0, 32.0);

    /**
     * A fact and the values it is drawn from.
     *
     * @param fact   which
     * @param values from a draw between 0 and 1, the larger the worse
     */
    private record Drawn(String fact, Function<Double, Object> values) {

        static Drawn between(String fact, double best, double worst) {
            return new Drawn(fact, share -> best + share * (worst - best));
        }

        static Drawn of(String fact, List<?> bestFirst) {
            return new Drawn(fact, share -> bestFirst.get((int) (share * bestFirst.size())));
        }

        Site in(Site site, double share) {
            return site.with(FactId.of(fact), values.apply(share));
        }
    }

    /**
     * More of one fact never helps one check at one place.
     *
     * @param around what else may be different in the house
     */
    private record Law(String says, Path house, String check, String place, Drawn worsened, List<Drawn> around) {
        static Law of(String says, Path house, String check, String place, Drawn worsened, Drawn... around) {
            return new Law(says, house, check, place, worsened, List.of(around));
        }

        @Override
        public String toString() {
            return says + " " + check;
        }
    }

    static List<Law> laws() {
        Drawn network = Drawn.between("supply.loopImpedanceOhm", 0.05, 1.2);
        Drawn length = Drawn.between("heat-pump.cable.lengthM", 1, 120);
        Drawn section = Drawn.of("heat-pump.cable.crossSectionMm2", SECTIONS);
        Drawn breaker = Drawn.of("heat-pump.protection.ratedCurrentA", BREAKERS);
        Drawn kitchenLength = Drawn.between("kitchen.cable.lengthM", 1, 80);
        Drawn kitchenSection = Drawn.of("kitchen.cable.crossSectionMm2", SECTIONS);
        Drawn kitchenBreaker = Drawn.of("kitchen.protection.ratedCurrentA", BREAKERS);
        Drawn limitingClass = Drawn.of("kitchen.protection.energyLimitingClass", List.of(3, 2));
        Drawn rating = Drawn.of("annex-board.rcd.ratedResidualCurrentA", RCD_RATINGS);
        Drawn electrode = Drawn.between("electrode.resistanceOhm", 1, 2500);
        Drawn faultA = Drawn.between("inverter.faultCurrentA", 400, 15);
        List<Law> laws = new ArrayList<>();
        laws.add(Law.of(
                "a longer cable never helps",
                HOUSE,
                "fault.disconnection",
                "heat-pump",
                length,
                network,
                section,
                breaker));
        laws.add(Law.of(
                "a thinner cable never helps",
                HOUSE,
                "fault.disconnection",
                "heat-pump",
                section,
                network,
                length,
                breaker));
        laws.add(Law.of(
                "a larger breaker never helps",
                HOUSE,
                "fault.disconnection",
                "heat-pump",
                breaker,
                network,
                length,
                section));
        laws.add(Law.of(
                "a weaker network never helps",
                HOUSE,
                "fault.disconnection",
                "heat-pump",
                network,
                length,
                section,
                breaker));
        // Behind a loop short enough that the inverter's limit counts: a long one keeps it from seeing the fault at
        // all.
        laws.add(Law.of(
                "a weaker inverter never helps",
                HOUSE,
                "fault.disconnection",
                "heat-pump",
                Drawn.between("inverter.faultCurrentA", 300, 15),
                Drawn.between("heat-pump.cable.lengthM", 1, 20),
                Drawn.of("inverter.shutOffTimeS", List.of(0.1, 0.3, 1.0)),
                breaker));
        laws.add(Law.of(
                "a slower shut-down never helps",
                HOUSE,
                "fault.disconnection",
                "heat-pump",
                Drawn.between("inverter.shutOffTimeS", 0.02, 3),
                Drawn.between("heat-pump.cable.lengthM", 1, 30),
                faultA,
                breaker));
        laws.add(Law.of(
                "more voltage left never helps",
                HOUSE,
                "fault.disconnection",
                "heat-pump",
                Drawn.between("inverter.shutOffVoltageV", 0, 120),
                Drawn.between("heat-pump.cable.lengthM", 1, 30),
                breaker));
        laws.add(Law.of(
                "a larger electrode resistance never helps",
                TT_HOUSE,
                "fault.disconnection",
                "annex-board",
                electrode,
                rating,
                network));
        laws.add(Law.of(
                "a larger rating of the RCD never helps",
                TT_HOUSE,
                "fault.disconnection",
                "annex-board",
                rating,
                electrode,
                network));
        laws.add(Law.of(
                "a larger rating of the RCD never helps",
                TT_HOUSE,
                "rcd.touchVoltage",
                "annex-board",
                rating,
                electrode));
        laws.add(Law.of(
                "a larger electrode resistance never helps",
                TT_HOUSE,
                "rcd.touchVoltage",
                "annex-board",
                electrode,
                rating));
        laws.add(Law.of(
                "a larger rating of the RCD never helps",
                HOUSE,
                "rcd.additional",
                "kitchen",
                Drawn.of("rcd-house.rcd.ratedResidualCurrentA", RCD_RATINGS)));
        laws.add(Law.of(
                "a larger electrode resistance never helps",
                Houses.TERRACE,
                "link.electrode",
                "main-earth",
                Drawn.between("garden-rod.resistanceOhm", 1, 400)));
        laws.add(Law.of(
                "more load never helps",
                HOUSE,
                "switch.load",
                "islanding-switch",
                Drawn.between("heat-pump.load.powerW", 500, 30000),
                Drawn.between("oven.load.powerW", 500, 8000),
                Drawn.of("backup-fuse.protection.ratedCurrentA", List.of(25.0, 35.0, 40.0))));
        laws.add(Law.of(
                "more sockets' load never helps",
                HOUSE,
                "switch.load",
                "islanding-switch",
                Drawn.between("workshop.load.powerW", 100, 9000),
                Drawn.between("kitchen.load.powerW", 100, 9000),
                Drawn.between("heat-pump.load.powerW", 10000, 24000)));
        Drawn motor = Drawn.between("heat-pump.load.powerW", 300, 7000);
        Drawn multiple = Drawn.between("heat-pump.load.startCurrentRatio", 1, 8);
        Drawn duration = Drawn.between("heat-pump.load.startTimeS", 0.1, 20);
        Drawn start = Drawn.of("heat-pump.load.start", List.of(StartKind.SOFT, StartKind.STAR_DELTA, StartKind.DIRECT));
        laws.add(Law.of(
                "a larger motor never starts easier",
                HOUSE,
                "start.current",
                "heat-pump",
                motor,
                multiple,
                duration,
                start));
        laws.add(Law.of(
                "a larger start current never helps",
                HOUSE,
                "start.current",
                "heat-pump",
                multiple,
                motor,
                duration,
                start));
        laws.add(Law.of(
                "a longer start never helps", HOUSE, "start.current", "heat-pump", duration, motor, multiple, start));
        laws.add(Law.of(
                "a larger start current never dips less",
                HOUSE,
                "start.dip",
                "heat-pump",
                Drawn.between("heat-pump.load.startCurrentRatio", 1.1, 12),
                Drawn.of("heat-pump.load.start", List.of(StartKind.DIRECT)),
                Drawn.between("heat-pump.load.powerW", 3000, 9000),
                length,
                network));
        laws.add(Law.of(
                "more feed-in never helps",
                HOUSE,
                "switch.feedIn",
                "islanding-switch",
                Drawn.between("inverter.feedInPowerW", 1000, 40000),
                Drawn.of("islanding-switch.ratedCurrentA", List.of(25.0, 40.0, 63.0))));
        laws.add(Law.of(
                "a larger fuse never helps",
                HOUSE,
                "switch.backupFuse",
                "islanding-switch",
                Drawn.between("backup-fuse.protection.ratedCurrentA", 16, 80),
                Drawn.between("islanding-switch.largestBackupFuseA", 20, 63)));
        laws.add(Law.of(
                "a stronger network never helps",
                HOUSE,
                "switch.shortCircuit",
                "islanding-switch",
                Drawn.between("supply.prospectiveCurrentA", 500, 25000),
                Drawn.between("islanding-switch.conditionalShortCircuitCurrentA", 3000, 20000)));
        // On lights, four circuits bunched: there a small fuse may lie between ampacity and tripping current.
        Drawn thin = Drawn.of("lights.cable.crossSectionMm2", SECTIONS);
        Drawn small = Drawn.of("lights.protection.ratedCurrentA", List.of(6.0, 10.0, 13.0));
        Drawn kind = Drawn.of("lights.protection.kind", List.of(OvercurrentKind.MCB, OvercurrentKind.FUSE));
        for (String check : List.of("overload.design", "overload.tripping")) {
            laws.add(Law.of("a thinner conductor never helps", HOUSE, check, "lights", thin, small, kind));
            laws.add(Law.of(
                    "more circuits beside it never help",
                    HOUSE,
                    check,
                    "lights",
                    new Drawn("lights.cable.groupedCircuits", share -> 1 + (int) (share * 9)),
                    thin,
                    small,
                    kind));
            laws.add(Law.of(
                    "warmer surroundings never help",
                    HOUSE,
                    check,
                    "lights",
                    Drawn.between("lights.cable.ambientDegC", 10, 60),
                    thin,
                    small,
                    kind));
        }
        laws.add(Law.of(
                "more load never helps",
                HOUSE,
                "overload.design",
                "kitchen",
                Drawn.between("kitchen.load.powerW", 100, 8000),
                kitchenBreaker));
        laws.add(Law.of(
                "a thinner protective conductor never helps",
                HOUSE,
                "conductor.protective",
                "kitchen",
                Drawn.of("kitchen.cable.protectiveCrossSectionMm2", SECTIONS),
                kitchenSection,
                kitchenLength,
                limitingClass));
        Drawn breaks =
                Drawn.of("kitchen.protection.breakingCapacityA", List.of(25000.0, 10000.0, 6000.0, 3000.0, 1500.0));
        Drawn strength = Drawn.between("supply.prospectiveCurrentA", 400, 16000);
        laws.add(Law.of(
                "a device that breaks less never helps",
                HOUSE,
                "shortCircuit.breakingCapacity",
                "kitchen",
                breaks,
                strength));
        laws.add(Law.of(
                "a stronger network never helps", HOUSE, "shortCircuit.breakingCapacity", "kitchen", strength, breaks));
        laws.add(Law.of(
                "a thinner cable never helps",
                HOUSE,
                "shortCircuit.conductor",
                "kitchen",
                kitchenSection,
                kitchenLength,
                kitchenBreaker,
                limitingClass));
        laws.add(Law.of(
                "a stronger source never helps",
                HOUSE,
                "shortCircuit.island",
                "inverter",
                Drawn.between("inverter.faultCurrentA", 15, 120),
                Drawn.between("inverter.shutOffTimeS", 0.05, 10),
                Drawn.of("inverter.cable.crossSectionMm2", SECTIONS)));
        return laws;
    }

    @ParameterizedTest
    @MethodSource("laws")
    void moreNeverHelps(Law law) {
        Random random = new Random(20261125);
        Site house = Houses.read(law.house());
        Set<Outcome> seen = EnumSet.noneOf(Outcome.class);
        for (int i = 0; i < CASES; i++) {
            Site site = house;
            for (Drawn other : law.around()) site = other.in(site, random.nextDouble());
            double one = random.nextDouble();
            double two = random.nextDouble();
            Finding better = worst(law, law.worsened().in(site, Math.min(one, two)));
            Finding worse = worst(law, law.worsened().in(site, Math.max(one, two)));
            if (better == null || worse == null) continue;
            seen.add(better.outcome());
            seen.add(worse.outcome());
            assertThat(worse.outcome() == Outcome.MET && better.outcome() == Outcome.NOT_MET)
                    .as("%s: %s then %s", law, better, worse)
                    .isFalse();
            if (law.check().equals("fault.disconnection"))
                assertThat(value(worse)).as("latest clearing of %s", law).isGreaterThanOrEqualTo(value(better));
        }
        assertThat(seen).contains(Outcome.MET, Outcome.NOT_MET);
    }

    private static double value(Finding finding) {
        Finding.Measure measure = finding.measure();
        assertThat(measure).isNotNull();
        return measure.value();
    }

    /** Where a check found several things at its place, the one that is not met, else the one with the larger value. */
    private static Finding worst(Law law, Site site) {
        Finding worst = null;
        for (Finding finding : Houses.assess(site).findings()) {
            if (!finding.key().check().equals(law.check())
                    || !finding.key().place().text().equals(law.place())) continue;
            if (worst == null || isWorse(finding, worst)) worst = finding;
        }
        return worst;
    }

    private static boolean isWorse(Finding a, Finding b) {
        if (a.outcome() != b.outcome()) return a.outcome() == Outcome.NOT_MET;
        return a.measure() != null
                && b.measure() != null
                && a.measure().value() > b.measure().value();
    }
}
