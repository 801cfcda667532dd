package tideover.files.cells;

import java.util.List;
import tideover.files.Edit;
import tideover.files.InputProblem;

/** What became of a list of circuits. */
public sealed interface CircuitCsvResult {

    /**
     * The list is sound.
     *
     * @param edits that make the site as the list says; none where it says nothing new
     * @param added circuits among them that are new
     */
    record Read(List<Edit> edits, int added) implements CircuitCsvResult {
        public Read {
            edits = List.copyOf(edits);
        }
    }

    /**
     * The list has problems; nothing is taken from it.
     *
     * @param problems all of them, in the order of the file; at least one. A column is the number of the cell in its row
     */
    record Refused(List<InputProblem> problems) implements CircuitCsvResult {
        public Refused {
            problems = List.copyOf(problems);
            if (problems.isEmpty()) throw new IllegalArgumentException("refused without a problem");
        }
    }
}
