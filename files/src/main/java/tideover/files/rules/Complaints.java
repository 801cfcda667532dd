package tideover.files.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.files.InputProblem;
import tideover.files.text.Nearest;
import tideover.files.yaml.Spot;
import tideover.files.yaml.YamlProblem;

/** Notes what is wrong with rule books. */
final class Complaints {

    private final List<InputProblem> problems = new ArrayList<>();
    private final Nearest nearest = new Nearest();

    List<InputProblem> problems() {
        return List.copyOf(problems);
    }

    boolean isEmpty() {
        return problems.isEmpty();
    }

    /** What the text itself has wrong. */
    void of(List<YamlProblem> broken) {
        for (YamlProblem problem : broken) problems.add(InputProblem.of(problem));
    }

    /** A problem at a field. */
    void at(Spot spot, String field, RuleProblem problem, String... arguments) {
        if (arguments.length != problem.arity())
            throw new IllegalArgumentException(
                    "%s takes %d arguments, not %d".formatted(problem, problem.arity(), arguments.length));
        List<PhraseArg> typed = new ArrayList<>(arguments.length);
        for (String argument : arguments) typed.add(PhraseArg.verbatim(argument));
        problems.add(InputProblem.at(spot, field, new Phrase(problem.key(), typed)));
    }

    void keyUnknown(Spot spot, String field, String found, Collection<String> allowed) {
        String near = nearest.of(found, allowed);
        String all = String.join(", ", allowed);
        if (near == null) at(spot, field, RuleProblem.KEY_UNKNOWN, found, all);
        else at(spot, field, RuleProblem.KEY_UNKNOWN_NEAR, found, near, all);
    }

    void wordUnknown(Spot spot, String field, String found, Collection<String> allowed) {
        String near = nearest.of(found, allowed);
        String all = String.join(", ", allowed);
        if (near == null) at(spot, field, RuleProblem.WORD_UNKNOWN, found, all);
        else at(spot, field, RuleProblem.WORD_UNKNOWN_NEAR, found, near, all);
    }

    /** There are too many limits to list them all. */
    void limitUnknown(Spot spot, String field, String found, Collection<String> known) {
        String near = nearest.of(found, known);
        if (near == null) at(spot, field, RuleProblem.LIMIT_UNKNOWN, found);
        else at(spot, field, RuleProblem.LIMIT_UNKNOWN_NEAR, found, near);
    }
}
