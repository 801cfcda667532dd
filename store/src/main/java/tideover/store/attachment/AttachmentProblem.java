package tideover.store.attachment;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.files.InputProblem;

/** Why a file cannot be attached; each has a sentence in the bundle under {@link #key()}. */
public enum AttachmentProblem {
    /** File. */
    EMPTY("empty", 1),
    /** File, largest size in megabytes. */
    TOO_LARGE("tooLarge", 2),
    /** File. */
    TYPE_UNKNOWN("typeUnknown", 1),
    /** File. */
    TYPE_HEIC("typeHeic", 1),
    /** File, its ending, what the content is, the ending for that. */
    ENDING_OTHER("endingOther", 4),
    /** File. */
    DAMAGED("damaged", 1);

    private final String name;
    private final int arity;

    AttachmentProblem(String name, int arity) {
        this.name = name;
        this.arity = arity;
    }

    /** Where its wording stands in the bundle. */
    public String key() {
        return "attachment." + name;
    }

    /** Number of places its sentence fills. */
    public int arity() {
        return arity;
    }

    AttachmentResult refused(String fileName, String... more) {
        List<PhraseArg> arguments = new ArrayList<>();
        arguments.add(PhraseArg.verbatim(fileName));
        for (String argument : more) arguments.add(PhraseArg.verbatim(argument));
        if (arguments.size() != arity)
            throw new IllegalArgumentException("%s takes %d arguments, not %s".formatted(this, arity, arguments));
        return new AttachmentResult.Refused(
                List.of(new InputProblem(fileName, 0, 0, "", new Phrase(key(), arguments))));
    }
}
