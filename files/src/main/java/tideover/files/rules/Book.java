package tideover.files.rules;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Stance;
import tideover.engine.rules.Topic;

/**
 * One rule book as it stands in its file.
 *
 * @param name   short name, such as DE
 * @param over   name of the book under it; nothing for the lowest
 * @param title  name for the reader
 * @param topics how it stands to the topics it names
 * @param forms  limits it declares, with the words a choice may have; only the lowest declares any
 * @param limits its own limits
 * @param digest over its bytes
 */
record Book(
        String name,
        @Nullable String over,
        String title,
        Map<Topic, Stance> topics,
        Map<String, Form> forms,
        List<Limit> limits,
        Digest digest) {

    Book {
        topics = Map.copyOf(topics);
        forms = Map.copyOf(forms);
        limits = List.copyOf(limits);
    }

    /**
     * What a limit may be.
     *
     * @param choices words it may have; empty for a number
     */
    record Form(List<String> choices) {
        Form {
            choices = List.copyOf(choices);
        }

        boolean isNumber() {
            return choices.isEmpty();
        }
    }

    /** Where a book stands among the others, and so what it must and may say. */
    enum Rank {
        /** The lowest: declares the limits. */
        LOWEST,
        /** Of a country: declares every topic. */
        COUNTRY,
        /** An operator's or a user's: only what differs. */
        OVERLAY
    }
}
