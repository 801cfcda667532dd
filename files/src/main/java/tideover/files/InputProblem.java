package tideover.files;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.files.text.MessageKey;
import tideover.files.yaml.Spot;
import tideover.files.yaml.YamlProblem;

/**
 * One thing wrong with a file from outside.
 *
 * @param file   as the person named it
 * @param line   from 1; 0 for the file as a whole
 * @param column from 1; 0 for the file as a whole
 * @param field  the fact as evidence would name it, such as {@code oven.cable.lengthM}, or the part of the file, such as
 *               {@code plan.removed}; empty where it concerns no field
 * @param phrase what is wrong and how to mend it
 */
public record InputProblem(String file, int line, int column, String field, Phrase phrase) {
    /** A problem at a place in a file. */
    public static InputProblem at(Spot spot, String field, Phrase phrase) {
        return new InputProblem(spot.file(), spot.line(), spot.column(), field, phrase);
    }

    /** A problem with the text itself, before any field is known. */
    public static InputProblem of(YamlProblem problem) {
        List<PhraseArg> arguments = new ArrayList<>();
        for (String argument : problem.arguments()) arguments.add(PhraseArg.verbatim(argument));
        return at(problem.spot(), "", new Phrase(key(problem.kind()), arguments));
    }

    /** Where the wording of such a problem stands in the bundle. */
    public static String key(YamlProblem.Kind kind) {
        return MessageKey.of(ProblemKind.PREFIX, kind);
    }
}
