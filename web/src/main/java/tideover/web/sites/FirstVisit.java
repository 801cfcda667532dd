package tideover.web.sites;

import java.util.List;
import java.util.Map;
import tideover.web.page.Frame;

/**
 * Five questions about a house.
 *
 * @param countries with a rule book of their own first
 * @param origins   who may say so
 * @param earthings what the earthing system may be
 * @param loads     what may be in the house
 * @param answers   what was answered so far, by field
 * @param problems  what cannot stand so, by field; none before it was sent
 */
public record FirstVisit(
        Frame frame,
        List<Choice> countries,
        List<Choice> origins,
        List<Choice> earthings,
        List<LoadRow> loads,
        Map<String, String> answers,
        Map<String, String> problems) {
    public FirstVisit {
        countries = List.copyOf(countries);
        origins = List.copyOf(origins);
        earthings = List.copyOf(earthings);
        loads = List.copyOf(loads);
        answers = Map.copyOf(answers);
        problems = Map.copyOf(problems);
    }

    /**
     * One answer that may be given.
     *
     * @param value as it is sent
     * @param words as it is read
     */
    public record Choice(String value, String words) {}

    /**
     * One load.
     *
     * @param id      as it is sent
     * @param name    as it is read
     * @param power   what it mostly takes, worded
     * @param there   whether it is ticked as being there
     * @param staysOn whether it is ticked as having to stay on
     */
    public record LoadRow(String id, String name, String power, Tick there, Tick staysOn) {}

    /** Whether a box is ticked. */
    public enum Tick {
        ON,
        OFF
    }

    /** What was answered; empty where nothing was. */
    public String answer(String field) {
        return answers.getOrDefault(field, "");
    }

    /** Whether this is the answer. */
    public boolean isAnswer(String field, String value) {
        return answer(field).equals(value);
    }

    /** What cannot stand so; empty where all is well. */
    public String problem(String field) {
        return problems.getOrDefault(field, "");
    }
}
