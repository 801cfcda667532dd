package tideover.files.cells;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tideover.files.Edit;
import tideover.files.InputProblem;

/** What typed text means. */
public sealed interface Typed {

    /**
     * One value.
     *
     * @param text as in {@link Edit#after()}; nothing where the cell was left empty
     */
    record Value(@Nullable String text) implements Typed {}

    /**
     * Several facts of a group, told in one cell; those that are not among them stay as they are.
     *
     * @param facts by their name in the group, such as {@code curve}; as in {@link Edit#after()}
     */
    record Facts(Map<String, @Nullable String> facts) implements Typed {
        public Facts {
            facts = Collections.unmodifiableMap(new LinkedHashMap<>(facts));
        }
    }

    /** Text that means nothing here; the problem names it and shows what can be typed. */
    record NotUnderstood(InputProblem problem) implements Typed {}

    /**
     * The edits that make it so; none where it says what is there already.
     *
     * @param path where the field stands, such as {@code oven.protection}
     * @param now  what stands at a path, as in {@link Edit#before()}; nothing where nothing does
     */
    default List<Edit> edits(String path, Function<String, @Nullable String> now) {
        List<Edit> edits = new ArrayList<>();
        if (this instanceof Value value) add(edits, path, now.apply(path), value.text());
        if (this instanceof Facts facts)
            facts.facts().forEach((name, text) -> add(edits, path + "." + name, now.apply(path + "." + name), text));
        return edits;
    }

    private static void add(List<Edit> edits, String path, @Nullable String before, @Nullable String after) {
        if (!Objects.equals(before, after)) edits.add(new Edit(path, before, after));
    }
}
