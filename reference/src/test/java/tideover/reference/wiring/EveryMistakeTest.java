package tideover.reference.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import tideover.engine.installation.Installation;
import tideover.engine.wiring.diagnosis.Dictionary;
import tideover.engine.wiring.diagnosis.Observation;
import tideover.engine.wiring.mistake.Coverage;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.mistake.Mistakes;
import tideover.engine.wiring.mistake.Unseen;
import tideover.engine.wiring.model.HouseModel;
import tideover.engine.wiring.procedure.PlannedReading;
import tideover.engine.wiring.procedure.Procedure;
import tideover.engine.wiring.procedure.Run;
import tideover.engine.wiring.procedure.Step;
import tideover.reference.Houses;

/** Every single mistake of the example houses changes something that can be read, or is harmless and it is said why. */
class EveryMistakeTest {

    static List<Path> sound() {
        List<Path> sound = new ArrayList<>(List.of(Houses.TOWN_HOUSE, Houses.FARMHOUSE, Houses.TERRACE));
        sound.addAll(Houses.yamlBelow(Houses.EXAMPLES.resolve("arrangements")));
        return sound;
    }

    private static Run run(Path house) {
        return Run.of(Procedure.of(HouseModel.of(Installation.of(Houses.read(house)))));
    }

    @ParameterizedTest
    @MethodSource("sound")
    void whatNobodyCanSeeHarmsNobody(Path house) {
        Run run = run(house);
        Coverage coverage = Coverage.of(run, Mistakes.of(run.procedure().model()));
        Map<Unseen, Integer> unseen = new EnumMap<>(Unseen.class);
        for (Mistake mistake : coverage.mistakes()) {
            if (coverage.isVisible(mistake)) continue;
            unseen.merge(coverage.reason(mistake), 1, Integer::sum);
            assertThat(coverage.hazards(mistake)).as(mistake.id()).isEmpty();
        }
        System.out.printf(
                "%s: %d mistakes, %d not revealed by demanded steps, unseen %s%n",
                house.getFileName(),
                coverage.mistakes().size(),
                coverage.hidden().size(),
                unseen);
        assertThat(coverage.mistakes()).hasSizeGreaterThan(200);
    }

    /** The point of the demanded steps: what endangers somebody comes out. */
    @ParameterizedTest
    @MethodSource("sound")
    void demandedStepsRevealEveryDangerousMistake(Path house) {
        Run run = run(house);
        Coverage coverage = Coverage.of(run, Mistakes.of(run.procedure().model()));
        for (Mistake mistake : coverage.hidden())
            assertThat(coverage.hazards(mistake)).as(mistake.id()).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("sound")
    void furtherStepsRevealAllThatCanBeRevealedAndNoneOfTheSmallestSetCanBeDropped(Path house) {
        Run run = run(house);
        Coverage coverage = Coverage.of(run, Mistakes.of(run.procedure().model()));
        List<Step> added = coverage.smallestAddition();
        assertThat(added).allMatch(step -> !step.name().isDemanded());
        for (Mistake mistake : coverage.hidden())
            if (coverage.isVisible(mistake))
                assertThat(coverage.revealing(mistake)).as(mistake.id()).containsAnyElementsOf(added);
        for (Step left : added)
            assertThat(coverage.hidden())
                    .as("without %s", left.id())
                    .anyMatch(mistake -> coverage.revealing(mistake).contains(left)
                            && coverage.revealing(mistake).stream()
                                    .noneMatch(step -> step != left && added.contains(step)));
    }

    @ParameterizedTest
    @MethodSource("sound")
    void allReadingsOfAMistakeLeadToItAndToThoseThatReadExactlyAlike(Path house) {
        Run run = run(house);
        List<Mistake> mistakes = Mistakes.of(run.procedure().model());
        Dictionary dictionary = Dictionary.of(run, mistakes);
        for (Mistake mistake : mistakes) {
            // One in 29: each asks every reading of every mistake.
            if (mistake.index() % 29 != 0) continue;
            byte[] shown = run.readings(mistake.defect());
            List<Observation> seen = new ArrayList<>();
            for (PlannedReading reading : run.procedure().readings())
                if (reading.lifted() == null) seen.add(new Observation(reading, Run.shown(shown[reading.index()])));
            List<Mistake> found = dictionary.explaining(seen);
            assertThat(found).as(mistake.id()).contains(mistake);
            for (Mistake other : found) {
                byte[] like = run.readings(other.defect());
                for (Observation each : seen)
                    assertThat(like[each.reading().index()])
                            .as(
                                    "%s beside %s: %s",
                                    other.id(), mistake.id(), each.reading().id())
                            .isEqualTo(shown[each.reading().index()]);
            }
        }
        Dictionary.Resolution resolution = dictionary.resolution();
        System.out.printf(
                "%s: all readings taken, %.2f mistakes left on average, %d at most%n",
                house.getFileName(), resolution.mean(), resolution.largest());
        assertThat(resolution.largest()).isLessThan(mistakes.size() / 4);
    }

    /** Chance has no part in it. */
    @ParameterizedTest
    @MethodSource("sound")
    void oneHouseReadsAlikeTwice(Path house) {
        Run one = run(house);
        Run other = run(house);
        for (Mistake mistake : Mistakes.of(one.procedure().model()))
            if (mistake.index() % 11 == 0)
                assertThat(Arrays.equals(one.readings(mistake.defect()), other.readings(mistake.defect())))
                        .as(mistake.id())
                        .isTrue();
    }
}
