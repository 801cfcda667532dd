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
 * @param factorRatio further factor of the country's book on the ampacity
 * @param missing   facts that are missing
 */
record Overload(
        @Nullable Double designA,
        Optional<Upstream> before,
        Optional<InstalledAmpacity> ampacity,
        double factorRatio,
        List<FactId> missing) {

    /** The limit that is not covered, if the rule book does not cover ampacity. */
    static Optional<String> uncovered(Judging judging) {
        if (judging.limit("ampacity.factor").isEmpty()) return Optional.of("ampacity.factor");
        return judging.limit("ampacity.referenceAmbientDegC").isEmpty()
                ? Optional.of("ampacity.referenceAmbientDegC")
                : Optional.empty();
    }

    /** Whether section and device of a thing are judged: where new or altered and with a cable of its own. */
    static boolean concerns(Installation installation, Fed fed) {
        return fed.cable() != null && installation.status(fed.id()) != Status.EXISTING;
    }

    /** The three currents of a thing's cable; the rule book covers ampacity. */
    static Overload of(ProtectionStudies studies, Fed fed, Judging judging) {
        Overload cable = ofCable(studies, fed, judging);
        List<FactId> missing = new ArrayList<>(cable.missing);
        Double designA = designA(studies, fed, missing);
        return new Overload(designA, cable.before, cable.ampacity, cable.factorRatio, missing);
    }

    /** The same without what flows: device and ampacity. */
    static Overload ofCable(ProtectionStudies studies, Fed fed, Judging judging) {
        List<FactId> missing = new ArrayList<>(0);
        Optional<Upstream> before = Upstream.find(studies.installation(), fed.id());
        if (before.isEmpty()) missing.add(fed.fact("protection.ratedCurrentA"));
        before.filter(b -> b.device().ratedCurrentA() == null).ifPresent(b -> missing.add(b.ratedCurrent()));
        Optional<InstalledAmpacity> ampacity = ampacity(studies, fed, judging, missing);
        double factorRatio =
                judging.limit("ampacity.factor").map(Limit::requireNumber).orElse(1.0);
        return new Overload(null, before, ampacity, factorRatio, missing);
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
            ProtectionStudies studies, Fed fed, Judging judging, List<FactId> missing) {
        Cable cable = fed.cable();
        if (cable == null) return Optional.empty();
        if (cable.crossSectionMm2() == null) missing.add(fed.fact("cable.crossSectionMm2"));
        if (cable.method() == null) missing.add(fed.fact("cable.method"));
        if (cable.crossSectionMm2() == null || cable.method() == null) return Optional.empty();
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
                        cable.crossSectionMm2(),
                        cable.groupedCircuits() == null ? 1 : cable.groupedCircuits(),
                        ambientDegC);
        if (found.isEmpty()) missing.add(fed.fact("cable.crossSectionMm2"));
        return found;
    }

    /** What the ampacity rests on. */
    static List<FactId> ampacityFacts(Fed fed) {
        return List.of(
                fed.fact("cable.crossSectionMm2"),
                fed.fact("cable.method"),
                fed.fact("cable.material"),
                fed.fact("cable.insulation"),
                fed.fact("cable.groupedCircuits"),
                fed.fact("cable.ambientDegC"));
    }

    /** Rated current of the device before the cable, I_n [A]; nothing if not known. */
    @Nullable
    Double ratedA() {
        return before.map(b -> b.device().ratedCurrentA()).orElse(null);
    }

    /** Ampacity as laid with all factors, I_z [A]; nothing if not known. */
    @Nullable
    Double ampacityA() {
        return ampacity.map(a -> a.currentA() * factorRatio).orElse(null);
    }
}
