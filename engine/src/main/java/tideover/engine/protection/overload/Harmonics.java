package tideover.engine.protection.overload;

import java.util.Optional;
import tideover.engine.network.HarmonicTable;
import tideover.engine.protection.ProtectionStudies;
import tideover.engine.site.Circuit;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;

/**
 * What the third harmonics of a three-phase load take from the ampacity of its cable.
 *
 * @param thirdRatio third harmonic over line current
 * @param row        how the cable is sized
 */
record Harmonics(double thirdRatio, HarmonicTable.Row row) {

    /** Of a circuit with three lines and a neutral whose load has third harmonics. */
    static Optional<Harmonics> find(ProtectionStudies studies, Fed fed) {
        double thirdRatio = ratio(fed);
        boolean isThreePhase = studies.installation().lines(fed.id()).size() == 3 && fed.has(Conductor.N);
        if (thirdRatio == 0 || !isThreePhase) return Optional.empty();
        return Optional.of(
                new Harmonics(thirdRatio, studies.tables().harmonics().require(thirdRatio)));
    }

    /** Third harmonic over line current; 0 where there is none or nobody has stated it. */
    static double ratio(Fed fed) {
        if (!(fed instanceof Circuit circuit) || circuit.load() == null) return 0;
        Double stated = circuit.load().thirdHarmonicRatio();
        return stated == null ? 0 : stated;
    }

    /**
     * Factor on the ampacity for the current of a line. Sized on the neutral, the cable bears in it the table's factor
     * times its ampacity, and the neutral carries three times the third harmonic of a line.
     *
     * @see "IEC 60364-5-52:2009, Annex E"
     */
    double ampacityRatio() {
        return switch (row.sizedOn()) {
            case LINE -> row.factorRatio();
            case NEUTRAL -> row.factorRatio() / HarmonicTable.neutralCurrentA(1, thirdRatio);
        };
    }
}
