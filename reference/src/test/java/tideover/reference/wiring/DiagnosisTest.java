package tideover.reference.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.installation.Installation;
import tideover.engine.wiring.diagnosis.Dictionary;
import tideover.engine.wiring.diagnosis.Doubt;
import tideover.engine.wiring.diagnosis.Observation;
import tideover.engine.wiring.diagnosis.Suggestion;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.mistake.Mistakes;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;
import tideover.engine.wiring.procedure.Procedure;
import tideover.engine.wiring.procedure.Run;
import tideover.reference.Houses;

/**
 * The fault call turned round. Source: a fault dictionary tells faults apart as far as their responses differ and no further
 * (single-fault assumption of test theory, README of the commissioning reference, section 6).
 */
class DiagnosisTest {

    static Stream<Path> houses() {
        return Stream.of(Houses.TOWN_HOUSE, Houses.TERRACE, Houses.FARMHOUSE);
    }

    private static Dictionary dictionary(Path house) {
        HouseModel model = HouseModel.of(Installation.of(Houses.read(house)));
        return Dictionary.of(Run.of(Procedure.of(model)), Mistakes.of(model));
    }

    private static List<Mistake> mistakes(Path house) {
        return Mistakes.of(HouseModel.of(Installation.of(Houses.read(house))));
    }

    /** Everything one would read with a mistake. With a core lifted one reads only when lines and neutrals are right. */
    private static List<Observation> everything(Dictionary dictionary, Mistake mistake) {
        List<Observation> seen = new ArrayList<>();
        for (PlannedReading reading : dictionary.run().procedure().readings())
            if (reading.lifted() == null || mistake.defect().power().isNone())
                seen.add(new Observation(reading, dictionary.shown(mistake, reading)));
        return seen;
    }

    @ParameterizedTest
    @MethodSource("houses")
    void theDiagnosisOfASingleMistakeHoldsItAndOnlyWhatReadsExactlySo(Path house) {
        Dictionary dictionary = dictionary(house);
        List<Mistake> mistakes = mistakes(house);
        // Every mistake of the smallest house, every seventh of the others: all of them would take minutes.
        int stride = mistakes.size() > 600 ? 7 : 1;
        int visible = 0;
        double sum = 0;
        int largest = 0;
        for (int i = 0; i < mistakes.size(); i += stride) {
            Mistake mistake = mistakes.get(i);
            List<Observation> seen = everything(dictionary, mistake);
            List<Mistake> left = dictionary.explaining(seen);
            assertThat(left).as(mistake.id()).extracting(Mistake::id).contains(mistake.id());
            for (Mistake other : left)
                assertThat(readsSo(dictionary, other, seen)).as(other.id()).isTrue();
            if (dictionary.isHealthy(seen)) continue;
            visible++;
            sum += left.size();
            largest = Math.max(largest, left.size());
        }
        Dictionary.Resolution all = dictionary.resolution();
        System.out.printf(
                "%s: %d mistakes; left of a visible one, all readings taken: mean %.1f, most %d (of all: %.1f, %d)%n",
                house.getFileName(), mistakes.size(), sum / visible, largest, all.mean(), all.largest());
        assertThat(visible).isGreaterThan(mistakes.size() / stride / 2);
    }

    private static boolean readsSo(Dictionary dictionary, Mistake mistake, List<Observation> seen) {
        for (Observation each : seen) {
            boolean isTold =
                    each.reading().lifted() == null || mistake.defect().power().isNone();
            if (isTold && dictionary.shown(mistake, each.reading()) != each.shown()) return false;
        }
        return true;
    }

    @ParameterizedTest
    @MethodSource("houses")
    void askingForTheNextReadingLeadsToTheMistakeOrToWhatReadsTheSame(Path house) {
        Dictionary dictionary = dictionary(house);
        List<Mistake> mistakes = mistakes(house);
        int most = 0;
        for (int i = 0; i < mistakes.size(); i += 29) {
            Mistake mistake = mistakes.get(i);
            List<Observation> seen = new ArrayList<>();
            Set<PlannedReading> taken = new HashSet<>();
            List<Mistake> left = dictionary.explaining(seen);
            Suggestion next = dictionary.findNext(left, taken).orElse(null);
            while (next != null) {
                seen.add(new Observation(next.reading(), dictionary.shown(mistake, next.reading())));
                taken.add(next.reading());
                List<Mistake> fewer = dictionary.explaining(seen);
                assertThat(fewer).as(mistake.id()).contains(mistake).hasSizeLessThan(left.size());
                left = fewer;
                next = dictionary.findNext(left, taken).orElse(null);
            }
            most = Math.max(most, taken.size());
        }
        System.out.printf("%s: at most %d readings to an end%n", house.getFileName(), most);
        // Halving alone would take 11 of 1279. But what lies at one circuit is read there only, circuit by circuit: a
        // tenth
        // of all readings is our own choice of what is still worth asking for.
        assertThat(most).isLessThan(dictionary.run().procedure().readings().size() / 10);
    }

    @Test
    void aReadingThatStandsAgainstAllOthersIsNamed() {
        Dictionary dictionary = dictionary(Houses.TOWN_HOUSE);
        Observation mode = seen(dictionary, "island-unloaded/mode:inverter", Shown.ISLAND);
        Observation connected = seen(dictionary, "connected-unloaded/mode:inverter", Shown.CONNECTED);
        Observation misread = seen(dictionary, "island-unloaded/position:islanding-switch", Shown.CLOSED);
        // It forms voltage only when told that the switch is open, so the indicator cannot have shown closed.
        List<Observation> all = List.of(mode, misread, connected);
        assertThat(dictionary.explaining(all)).isEmpty();
        assertThat(Doubt.find(dictionary, all)).hasValueSatisfying(doubt -> {
            assertThat(doubt.observation()).isEqualTo(misread);
            assertThat(doubt.isHealthy()).isTrue();
        });
    }

    private static Observation seen(Dictionary dictionary, String reading, Shown shown) {
        return new Observation(dictionary.findReading(reading).orElseThrow(), shown);
    }

    @ParameterizedTest
    @MethodSource("houses")
    void noReadingShowsWhatItsKindCannotShow(Path house) {
        Dictionary dictionary = dictionary(house);
        for (Mistake mistake : mistakes(house))
            for (PlannedReading reading : dictionary.run().procedure().readings())
                assertThat(reading.reading().kind().possible()).contains(dictionary.shown(mistake, reading));
    }
}
