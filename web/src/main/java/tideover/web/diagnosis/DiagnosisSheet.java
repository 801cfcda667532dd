package tideover.web.diagnosis;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.web.diagram.StateLink;
import tideover.web.page.Frame;

/**
 * What a caller has, and what was seen.
 *
 * @param address  of the site
 * @param nothing  why there is nothing to diagnose; empty where there is
 * @param troubles to choose from; none once one is chosen
 * @param call     its tree, as far as answers are given; nothing before one is chosen
 * @param problems what of the address could not be used, worded
 * @param seen     what was seen and what fits it; nothing before anything was given
 * @param choice   of a further reading; nothing where there is nothing to diagnose
 */
public record DiagnosisSheet(
        Frame frame,
        String address,
        String nothing,
        List<StateLink> troubles,
        @Nullable Call call,
        List<String> problems,
        @Nullable Seen seen,
        @Nullable Choice choice) {
    public DiagnosisSheet {
        troubles = List.copyOf(troubles);
        problems = List.copyOf(problems);
    }

    /**
     * A tree walked so far.
     *
     * @param other   address where another trouble is chosen
     * @param answers given so far
     * @param text    the question now, or what to read and do
     * @param caution what to heed before; empty where the hand goes nowhere
     * @param facts   of the house beneath it
     * @param ways    on, by answer; none at the end
     */
    public record Call(
            String title,
            String other,
            List<Answered> answers,
            Linked text,
            String caution,
            List<Fact> facts,
            List<StateLink> ways) {
        public Call {
            answers = List.copyOf(answers);
            facts = List.copyOf(facts);
            ways = List.copyOf(ways);
        }
    }

    /**
     * A question with its answer.
     *
     * @param back address where it is asked again
     */
    public record Answered(Linked question, String answer, String back) {}

    /** A fact of the house, line by line. */
    public record Fact(String heading, List<Linked> lines) {
        public Fact {
            lines = List.copyOf(lines);
        }
    }

    /**
     * What was seen and what follows from it.
     *
     * @param rows  each reading given
     * @param fits  what fits them, in sentences
     * @param kinds mistakes and failures that fit, by what was done
     * @param all   address where all of them are told; empty where they are
     * @param next  worth reading next
     */
    public record Seen(List<Row> rows, List<String> fits, List<Kind> kinds, String all, Next next) {
        public Seen {
            rows = List.copyOf(rows);
            fits = List.copyOf(fits);
            kinds = List.copyOf(kinds);
        }
    }

    /**
     * A reading given.
     *
     * @param away address without it
     */
    public record Row(Linked reading, String shown, String should, String away) {}

    /**
     * Mistakes of one kind.
     *
     * @param more how many are not told, worded; empty for none
     */
    public record Kind(String heading, List<Linked> mistakes, String more) {
        public Kind {
            mistakes = List.copyOf(mistakes);
        }
    }

    /**
     * The next reading.
     *
     * @param notes    why this one, or why none
     * @param cautions what to heed before
     * @param reading  nothing where no reading tells more
     * @param values   what it may show, with what would be left
     */
    public record Next(
            List<String> notes,
            List<String> cautions,
            @Nullable Linked reading,
            List<Value> values) {
        public Next {
            notes = List.copyOf(notes);
            cautions = List.copyOf(cautions);
            values = List.copyOf(values);
        }
    }

    /**
     * What a reading may show.
     *
     * @param left what fits then, as a number; empty where that is not told
     */
    public record Value(String words, String left, String address) {}

    /**
     * Readings to choose from.
     *
     * @param word     they are filtered by
     * @param situations in which they may be taken
     * @param kept     what else stands in the address
     * @param sentence how many there are, and how many are shown
     */
    public record Choice(
            String word, List<Option> situations, List<Kept> kept, String sentence, List<Reading> readings) {
        public Choice {
            situations = List.copyOf(situations);
            kept = List.copyOf(kept);
            readings = List.copyOf(readings);
        }
    }

    /**
     * How the house stands.
     *
     * @param state {@code chosen}, or empty
     */
    public record Option(String value, String words, String state) {}

    /** One name and value in the address. */
    public record Kept(String name, String value) {}

    /**
     * A reading to choose.
     *
     * @param should what it shows in the healthy house
     */
    public record Reading(Linked reading, String should, List<Value> values) {
        public Reading {
            values = List.copyOf(values);
        }
    }
}
