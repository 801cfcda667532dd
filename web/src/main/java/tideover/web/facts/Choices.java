package tideover.web.facts;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.site.ThingKind;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.ReferTo;
import tideover.papers.Wording;
import tideover.web.edit.CellText;
import tideover.web.facts.FactRow.Choice;

/** What may be chosen in a field, for one site and one reader. */
final class Choices {
    private final Site site;
    private final Wording words;
    private final FieldTable fields;
    private final CellText text;

    Choices(Site site, Wording words, FieldTable fields, CellText text) {
        this.site = site;
        this.words = words;
        this.fields = fields;
        this.text = text;
    }

    /**
     * The values; none where anything may be typed.
     *
     * @param now what stands there, which may be chosen in any case
     */
    List<Choice> of(Field field, String now) {
        if (field.kind() == FieldKind.YES_NO) return yesNo(field);
        if (field.kind() == FieldKind.WORD) return words(field);
        ReferTo refers = field.refersTo();
        return field.kind() == FieldKind.REFERENCE && refers != null ? things(refers, now) : List.of();
    }

    private List<Choice> yesNo(Field field) {
        List<Choice> choices = new ArrayList<>();
        for (String value : List.of("true", "false")) {
            String word = text.of(field.path(), value);
            choices.add(new Choice(word, word));
        }
        return choices;
    }

    private List<Choice> words(Field field) {
        List<Choice> choices = new ArrayList<>();
        if (fields.valueType(field).getEnumConstants() instanceof Enum<?>[] constants)
            for (Enum<?> constant : constants)
                choices.add(new Choice(text.of(field.path(), constant.name()), words.heading(constant)));
        return choices;
    }

    private List<Choice> things(ReferTo refers, String now) {
        List<Choice> choices = new ArrayList<>();
        for (ThingId reserved : List.of(ThingId.SUPPLY, ThingId.MAIN_EARTH))
            if (refers.allows(reserved)) choices.add(choice(reserved));
        for (Thing thing : site.planned().values())
            if (refers.allows(ThingKind.of(thing))) choices.add(choice(thing.id()));
        if (!now.isEmpty()
                && choices.stream().noneMatch(choice -> choice.value().equals(now))) choices.add(new Choice(now, now));
        return choices;
    }

    private Choice choice(ThingId id) {
        return new Choice(id.text(), words.name(id));
    }
}
