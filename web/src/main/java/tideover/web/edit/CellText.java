package tideover.web.edit;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Installation;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.cells.Typing;
import tideover.files.yaml.Node;
import tideover.files.yaml.NodeText;
import tideover.papers.Wording;

/** What stands in cells and fields of one site, in the reader's way of writing, and what typed text means there. */
public final class CellText {
    private final FieldTable fields;
    private final Wording words;
    private final Typing typing;

    private CellText(FieldTable fields, Wording words, Typing typing) {
        this.fields = fields;
        this.words = words;
        this.typing = typing;
    }

    /**
     * For one site and one reader.
     *
     * @param words knows the printed names of the site's things
     */
    public static CellText of(FieldTable fields, Wording words, Installation site) {
        Map<ThingId, String> names = new HashMap<>();
        for (Thing thing : site.things()) names.put(thing.id(), words.name(thing.id()));
        for (ThingId id : List.of(ThingId.SUPPLY, ThingId.MAIN_EARTH)) names.put(id, words.name(id));
        Typing typing = Typing.of(fields, words.locale(), words::word).with(names);
        return new CellText(fields, words, typing);
    }

    /**
     * A value as it is read and typed.
     *
     * @param field row of the field table, such as {@code circuits.cable.lengthM}
     * @param value as edits name it; nothing where it is missing
     */
    public String of(String field, @Nullable String value) {
        return fields.find(field).map(row -> typing.text(row, value)).orElse(value == null ? "" : value);
    }

    /** As {@link #of(String, String)}, of what stands in the tree of the site. */
    public String of(String field, Node value) {
        return fields.find(field).map(row -> typing.text(row, value, List.of())).orElseGet(() -> NodeText.of(value));
    }

    /** What typed text means in a field. */
    public tideover.files.cells.Typed read(Field field, String typed) {
        return typing.read(field, typed);
    }

    /** The words that may be typed in a field; none where anything may. */
    public List<String> wordsOf(String field) {
        Field row = fields.find(field).orElse(null);
        if (row == null || row.kind() != FieldKind.WORD && row.kind() != FieldKind.WORDS) return List.of();
        if (!(fields.valueType(row).getEnumConstants() instanceof Enum<?>[] constants)) return List.of();
        return Arrays.stream(constants).map(words::word).toList();
    }
}
