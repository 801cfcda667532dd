package tideover.files.yaml;

import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import tideover.files.yaml.YamlProblem.Kind;

/** Finds our own words for what the parser says, so that a message can tell how to mend it. */
final class SyntaxProblems {
    private SyntaxProblems() {}

    static YamlProblem of(String name, MarkedYamlEngineException syntax) {
        String problem = String.valueOf(syntax.getProblem());
        String context = String.valueOf(syntax.getContext());
        Spot at = syntax.getProblemMark()
                .map(mark -> new Spot(name, mark.getLine() + 1, mark.getColumn() + 1))
                .orElse(Spot.whole(name));
        // An unclosed quote or bracket is noticed at the end of the file but mended where it was opened.
        Spot opened = syntax.getContextMark()
                .map(mark -> new Spot(name, mark.getLine() + 1, mark.getColumn() + 1))
                .orElse(at);
        if (problem.contains("'\\t(TAB)'")) return YamlProblem.of(Kind.TAB, at);
        if (context.contains("quoted scalar")) return YamlProblem.of(Kind.QUOTE_OPEN, opened);
        if (problem.contains("<stream end>") || context.contains("flow mapping") || context.contains("flow sequence"))
            return YamlProblem.of(Kind.BRACKET_OPEN, opened);
        if (problem.contains("expected the node content"))
            return YamlProblem.of(Kind.VALUE_MISSING, at, quoted(problem));
        if (problem.contains("mapping values are not allowed")) return YamlProblem.of(Kind.COLON, at);
        if (problem.contains("cannot start any token")) return YamlProblem.of(Kind.FIRST_SIGN, at, quoted(problem));
        if (problem.contains("<block end>")
                || problem.contains("block sequence entries are not allowed")
                || problem.contains("could not find expected ':'")) return YamlProblem.of(Kind.INDENTATION, at);
        return YamlProblem.of(Kind.OTHER, at, problem);
    }

    /** The sign between the first two apostrophes. */
    private static String quoted(String problem) {
        int from = problem.indexOf('\'');
        int to = problem.indexOf('\'', from + 1);
        return to > from ? problem.substring(from + 1, to) : problem;
    }
}
