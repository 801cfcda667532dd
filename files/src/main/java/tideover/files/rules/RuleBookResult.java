package tideover.files.rules;

import java.util.List;
import tideover.engine.rules.RuleBook;
import tideover.files.InputProblem;

/** What became of rule books handed in. */
public sealed interface RuleBookResult {

    /** They hold. */
    record Readable(RuleBook rules) implements RuleBookResult {}

    /** They do not, and all that is wrong with them. */
    record Refused(List<InputProblem> problems) implements RuleBookResult {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
