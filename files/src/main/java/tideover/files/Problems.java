package tideover.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tideover.files.yaml.Spot;

/** Collects what is wrong with a file; the same thing twice (through an alias) is kept once. */
final class Problems {
    private static final Comparator<InputProblem> BY_PLACE = Comparator.comparing(InputProblem::file)
            .thenComparingInt(InputProblem::line)
            .thenComparingInt(InputProblem::column);

    private final Set<InputProblem> problems = new LinkedHashSet<>();

    void add(Spot spot, String field, ProblemKind kind, String... arguments) {
        problems.add(InputProblem.at(spot, field, kind.phrase(arguments)));
    }

    void add(InputProblem problem) {
        problems.add(problem);
    }

    boolean isEmpty() {
        return problems.isEmpty();
    }

    /** In the order of the file. */
    List<InputProblem> all() {
        List<InputProblem> sorted = new ArrayList<>(problems);
        sorted.sort(BY_PLACE);
        return sorted;
    }
}
