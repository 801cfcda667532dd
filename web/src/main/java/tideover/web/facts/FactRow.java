package tideover.web.facts;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.files.survey.Mark;

/**
 * One fact of a thing.
 *
 * @param field   inside the thing, such as {@code cable.lengthM}; its place on the page
 * @param about   thing and field, as evidence names it
 * @param label   what it is called, with its unit
 * @param hint    what it means
 * @param house   where what was found is changed; nothing for what only the plan knows
 * @param plan    where what is planned is changed; nothing for what the plan cannot change
 * @param built   as it was built, worded; empty where that is as planned
 * @param said    who says so, worded; empty where nothing is known
 * @param saidWas the same as an edit names it; empty where nothing is said of this very fact
 * @param mark    how sure it is
 */
public record FactRow(
        String field,
        String about,
        String label,
        String hint,
        @Nullable Field house,
        @Nullable Field plan,
        String built,
        String said,
        String saidWas,
        Mark mark) {

    /** How a value is given. */
    public enum Input {
        TEXT,
        NUMBER,
        /** Several values or groups in one text. */
        LONG,
        CHOICE
    }

    /**
     * Where a value is changed.
     *
     * @param path    of the edit
     * @param was     what stands there, as an edit names it; empty where nothing does
     * @param shown   what the field showed
     * @param typed   what it shows now: the same, or what was typed and refused
     * @param choices what may be chosen
     * @param through what shows through where nothing is stated, worded; empty where nothing does
     * @param problem what is wrong with what was typed; empty where nothing is
     */
    public record Field(
            String path,
            String was,
            String shown,
            String typed,
            Input input,
            List<Choice> choices,
            String through,
            String problem) {
        public Field {
            choices = List.copyOf(choices);
        }
    }

    /**
     * One value that may be chosen.
     *
     * @param value as it is sent
     * @param words as it is read
     */
    public record Choice(String value, String words) {}
}
