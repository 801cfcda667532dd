package tideover.command.keeping;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tideover.command.Desk;
import tideover.command.Refusal;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingKind;
import tideover.files.Edit;
import tideover.files.Field;
import tideover.files.SiteEdits;
import tideover.files.cells.Typed;
import tideover.files.cells.Typing;

/** What a person typed behind paths, as edits of one site: the same way of writing as in a cell of the workbench. */
final class TypedEdits {
    private static final List<String> SIDES = List.of("house", "plan", "built");

    private final Desk desk;
    private final SiteEdits.Facts facts;
    private final Typing typing;
    private final Map<String, String> sections = new HashMap<>();
    private final List<Edit> edits = new ArrayList<>();
    private final List<String> refused = new ArrayList<>();

    TypedEdits(Desk desk, Site site) {
        this.desk = desk;
        this.facts = new SiteEdits(desk.fields()).facts(site);
        this.typing = Typing.of(desk.fields(), desk.wording().locale(), desk.wording()::word);
        for (Thing thing : List.of(
                site.house().place(), site.house().gridOperator(), site.house().supply())) note(thing);
        site.house().things().forEach(this::note);
        site.plan().things().forEach(this::note);
        site.built().things().forEach(this::note);
    }

    private void note(Thing thing) {
        sections.put(thing.id().text(), ThingKind.sectionOf(thing));
    }

    void add(String path, String text) {
        Optional<Field> field = field(path);
        if (field.isEmpty()) {
            edits.add(new Edit(path, facts.find(path).orElse(null), text.isBlank() ? null : text.strip()));
            return;
        }
        Typed meant = typing.read(field.get(), text);
        if (meant instanceof Typed.NotUnderstood not)
            refused.add(desk.sentence(
                    "problem.inFile", path, desk.wording().of(not.problem().phrase())));
        else edits.addAll(meant.edits(path, each -> facts.find(each).orElse(null)));
    }

    /** Remembers what was no edit at all. */
    void refuse(String sentence) {
        refused.add(sentence);
    }

    /** All of them. @throws Refusal with every one that was not understood */
    List<Edit> edits() {
        if (!refused.isEmpty()) throw new Refusal(refused);
        return edits;
    }

    private Optional<Field> field(String path) {
        String inside = path;
        String first = path.substring(0, Math.max(0, path.indexOf('.')));
        if (SIDES.contains(first)) inside = path.substring(first.length() + 1);
        int dot = inside.indexOf('.');
        String section = dot < 0 ? null : sections.get(inside.substring(0, dot));
        return section == null ? Optional.empty() : desk.fields().find(section + inside.substring(dot));
    }
}
