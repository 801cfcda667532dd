package tideover.engine.protection.overload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.network.InstalledAmpacity;
import tideover.engine.network.LoadedConductors;
import tideover.engine.network.Surroundings;
import tideover.engine.network.Upstream;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Cable;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Insulation;
import tideover.engine.site.Inverter;
import tideover.engine.site.Material;
import tideover.engine.site.PerLine;
import tideover.engine.site.Status;

/**
 * The three currents of IEC 60364-4-43, 433.1 for one supply cable.
 *
 * @param designA   design current, I_b [A]; nothing if not known
 * @param before    overcurrent device before the cable, its rated current is I_n
 * @param ampacity  ampacity as laid, I_z, with its factors; nothing if not known
 * @param harmonics what third harmonics take from it; nothing where there are none or not three lines and a neutral
 * @param factorRatio further factor of the country's book on the ampacity
 * @param missing   facts that are missing
 */
public record Overload(
        @Nullable Double designA,
        Optional<Upstream> before,
        Optional<InstalledAmpacity> ampacity,
        Optional<Harmonics> harmonics,
        double factorRatio,
        List<FactId> missing) {

    /** The limit that is not covered, if the rule book does not cover ampacity. */
    public static Optional<String> uncovered(Judging judging) {
        if (judging.limit("ampacity.factor").isEmpty()) return Optional.of("ampacity.factor");
        return judging.limit("ampacity.referenceAmbientDegC").isEmpty()
                ? Optional.of("ampacity.referenceAmbientDegC")
                : Optional.empty();
    }

    /** Whether section and device of a thing are judged: where new or altered and with a cable of its own. */
    public static boolean concerns(Installation installation, Fed fed) {
        return fed.cable() != null && installation.status(fed.id()) != Status.EXISTING;
    }

    /** The three currents of a thing's cable; the rule book covers ampacity. */
    static Overload of(ProtectionStudies studies, Fed fed, Judging judging) {
        Overload cable = ofCable(studies, fed, judging);
        List<FactId> missing = new ArrayList<>(cable.missing);
        Double designA = designA(studies, fed, missing);
        return new Overload(designA, cable.before, cable.ampacity, cable.harmonics, cable.factorRatio, missing);
    }

    /** The same without what flows: device and ampacity. */
    public static Overload ofCable(ProtectionStudies studies, Fed fed, Judging judging) {
        List<FactId> missing = new ArrayList<>(0);
        Optional<Upstream> before = Upstream.find(studies.installation(), fed.id());
        if (before.isEmpty()) missing.add(fed.fact("protection.ratedCurrentA"));
        before.filter(b -> b.device().ratedCurrentA() == null).ifPresent(b -> missing.add(b.ratedCurrent()));
        Optional<InstalledAmpacity> ampacity =
                ampacity(studies, fed, fed.cable() == null ? null : fed.cable().crossSectionMm2(), judging, missing);
        return new Overload(null, before, ampacity, Harmonics.find(studies, fed), factorRatio(judging), missing);
    }

    /** Ampacity of the neutral as laid, with all factors but that for harmonics [A]; nothing if facts are missing. */
    static Optional<Double> findNeutralAmpacityA(
            ProtectionStudies studies, Fed fed, Judging judging, List<FactId> missing) {
        Cable cable = fed.cable();
        if (cable == null) return Optional.empty();
        Double ownMm2 =
                cable.neutralCrossSectionMm2() == null ? cable.crossSectionMm2() : cable.neutralCrossSectionMm2();
        return ampacity(studies, fed, ownMm2, judging, missing).map(found -> found.currentA() * factorRatio(judging));
    }

    private static double factorRatio(Judging judging) {
        return judging.limit("ampacity.factor").map(Limit::requireNumber).orElse(1.0);
    }

    /** Of a feeder the larger of what is drawn and what is fed back, which never add on one line. */
    private static @Nullable Double designA(ProtectionStudies studies, Fed fed, List<FactId> missing) {
        if (studies.demand() == null) return null;
        if (fed instanceof Inverter inverter)
            return studies.demand().findFeedInA(inverter).map(PerLine::largest).orElse(inverter.lineCurrentA());
        if (fed instanceof Circuit circuit) {
            missing.addAll(studies.demand().missing(circuit));
            return studies.demand().findCurrentA(circuit).map(PerLine::largest).orElse(null);
        }
        return studies.demand().carriedA(fed.id());
    }

    private static Optional<InstalledAmpacity> ampacity(
            ProtectionStudies studies,
            Fed fed,
            @Nullable Double crossSectionMm2,
            Judging judging,
            List<FactId> missing) {
        Cable cable = fed.cable();
        if (cable == null) return Optional.empty();
        if (crossSectionMm2 == null) missing.add(fed.fact("cable.crossSectionMm2"));
        if (cable.method() == null) missing.add(fed.fact("cable.method"));
        if (crossSectionMm2 == null || cable.method() == null) return Optional.empty();
        int lines = studies.installation().lines(fed.id()).size();
        String reference = Surroundings.of(cable.method()) == Surroundings.SOIL
                ? "ampacity.referenceSoilDegC"
                : "ampacity.referenceAmbientDegC";
        double ambientDegC = cable.ambientDegC() != null
                ? cable.ambientDegC()
                : judging.limit(reference).map(Limit::requireNumber).orElse(30.0);
        Optional<InstalledAmpacity> found = studies.tables()
                .ampacity()
                .findInstalled(
                        cable.material() == null ? Material.COPPER : cable.material(),
                        cable.insulation() == null ? Insulation.PVC : cable.insulation(),
                        cable.method(),
                        // A line-to-line circuit without neutral loads two conductors, like line and neutral.
                        lines == 1 || lines == 2 && !fed.has(Conductor.N)
                                ? LoadedConductors.TWO
                                : LoadedConductors.THREE,
                        crossSectionMm2,
                        cable.groupedCircuits() == null ? 1 : cable.groupedCircuits(),
                        ambientDegC);
        if (found.isEmpty()) missing.add(fed.fact("cable.crossSectionMm2"));
        return found;
    }

    /** What the ampacity rests on. */
    public static List<FactId> ampacityFacts(Fed fed) {
        List<FactId> facts = new ArrayList<>(List.of(
                fed.fact("cable.crossSectionMm2"),
                fed.fact("cable.method"),
                fed.fact("cable.material"),
                fed.fact("cable.insulation"),
                fed.fact("cable.groupedCircuits"),
                fed.fact("cable.ambientDegC")));
        if (Harmonics.ratio(fed) > 0) facts.add(fed.fact("load.thirdHarmonicRatio"));
        return facts;
    }

    /** Rated current of the device before the cable, I_n [A]; nothing if not known. */
    public @Nullable Double ratedA() {
        return before.map(b -> b.device().ratedCurrentA()).orElse(null);
    }

    /** Ampacity as laid with all factors, I_z [A]; nothing if not known. */
    public @Nullable Double ampacityA() {
        double harmonicRatio = harmonics.map(Harmonics::ampacityRatio).orElse(1.0);
        return ampacity.map(a -> a.currentA() * factorRatio * harmonicRatio).orElse(null);
    }
}
