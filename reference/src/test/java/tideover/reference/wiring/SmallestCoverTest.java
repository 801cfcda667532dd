package tideover.reference.wiring;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;
import tideover.engine.wiring.mistake.SmallestCover;

/** The smallest cover is as small as that of a general-purpose integer programme: ojAlgo 57.1.0, MIT licence. */
class SmallestCoverTest {

    static IntStream seeds() {
        return IntStream.range(0, 60);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void coverIsAsSmallAsTheIntegerProgrammeSays(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int elements = random.nextInt(5, 60);
        int count = random.nextInt(4, 24);
        List<BitSet> sets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            BitSet set = new BitSet();
            for (int element = 0; element < elements; element++) if (random.nextInt(5) == 0) set.set(element);
            sets.add(set);
        }
        BitSet universe = new BitSet();
        universe.set(0, elements);
        List<Integer> chosen = SmallestCover.of(sets, universe);
        BitSet covered = new BitSet();
        chosen.forEach(i -> covered.or(sets.get(i)));
        BitSet coverable = new BitSet();
        sets.forEach(coverable::or);
        assertThat(covered).isEqualTo(coverable);
        assertThat(chosen).hasSize(integerProgramme(sets, coverable));
    }

    private static int integerProgramme(List<BitSet> sets, BitSet universe) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        List<Variable> taken = new ArrayList<>();
        for (int i = 0; i < sets.size(); i++)
            taken.add(model.newVariable("set" + i).binary().weight(1));
        universe.stream().forEach(element -> {
            Expression row = model.newExpression("element" + element).lower(1);
            for (int i = 0; i < sets.size(); i++) if (sets.get(i).get(element)) row.set(taken.get(i), 1);
        });
        Optimisation.Result result = model.minimise();
        assertThat(result.getState().isOptimal()).isTrue();
        return (int) Math.round(result.getValue());
    }
}
