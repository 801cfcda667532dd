package tideover.command.keeping;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.command.Desk;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.PhraseArg;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.files.SiteWriter;
import tideover.files.cells.Typing;
import tideover.files.survey.Mark;
import tideover.files.survey.Marks;
import tideover.files.survey.SurveyFacts;
import tideover.files.survey.SurveyFacts.Asked;
import tideover.files.survey.Things;
import tideover.files.survey.Waiting;
import tideover.papers.Wording;
import tideover.papers.json.Json;
import tideover.papers.json.ProgramVersion;
import tideover.papers.wiring.Cell;
import tideover.papers.wiring.Column;
import tideover.papers.wiring.Listing;
import tideover.papers.wiring.ListingText;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** The facts of a site that are still to be found out: as text, and as JSON as docs/survey-json.md describes it. */
final class SurveyReport {
    /** Raised when a field changes its meaning or goes. */
    private static final int FORMAT = 1;

    private final Desk desk;
    private final Site site;
    private final Wording wording;
    private final Typing typing;
    private final Waiting waiting;
    private final Marks marks;
    private final List<Asked> open = new ArrayList<>();
    private final int known;

    SurveyReport(Desk desk, Site site, Assessment assessment) {
        this.desk = desk;
        this.site = site;
        this.wording = desk.wording().with(assessment.installation());
        Map<ThingId, String> names = new HashMap<>();
        for (Thing thing : assessment.installation().things()) names.put(thing.id(), wording.name(thing.id()));
        this.typing = Typing.of(desk.fields(), wording.locale(), wording::word).with(names);
        this.waiting = new Waiting(assessment.findings());
        this.marks = new Marks(site, desk.fields(), waiting);
        List<Asked> all = new SurveyFacts(desk.fields()).of(site, new Things(site), waiting);
        for (Asked fact : all) if (marks.of(fact.fact()) != Mark.KNOWN) open.add(fact);
        this.known = Math.min(SurveyFacts.FIRST, all.size() - open.size());
    }

    /** What sets the price, then what else is waited for; ends with a line break. */
    String text() {
        List<Listing.Group> groups = new ArrayList<>();
        if (!open.isEmpty()) groups.add(new Listing.Group(wording.text("survey.first"), rows(0, first())));
        if (first() < open.size())
            groups.add(new Listing.Group(wording.text("survey.then"), rows(first(), open.size())));
        String lead = wording.text("survey.lead", PhraseArg.count(first()), PhraseArg.count(known));
        List<Column> columns = List.of(
                Column.numbers("", wording.text("survey.column.rank"), 1),
                Column.words("", wording.text("survey.column.thing"), 4),
                Column.words("", wording.text("survey.column.fact"), 4),
                Column.words("", wording.text("survey.column.now"), 3),
                Column.words("", wording.text("survey.column.how"), 4),
                Column.numbers("", wording.text("survey.column.waiting"), 1),
                Column.words("", wording.text("survey.column.path"), 5));
        return ListingText.of(new Listing("survey", wording.name(ThingId.PLACE), List.of(lead), columns, groups));
    }

    private int first() {
        return Math.min(SurveyFacts.FIRST, open.size());
    }

    private List<List<Cell>> rows(int from, int to) {
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = from; i < to; i++) {
            Asked fact = open.get(i);
            int findings = waiting.findings(fact.fact());
            rows.add(List.of(
                    Cell.of(i + 1),
                    Cell.of(thing(fact)),
                    Cell.of(label(fact)),
                    Cell.of(now(fact)),
                    Cell.of(wording.word(fact.field().source())),
                    findings == 0 ? Cell.EMPTY : Cell.of(findings),
                    Cell.of(fact.fact().toString())));
        }
        return rows;
    }

    private String thing(Asked fact) {
        ThingId id = fact.fact().thing();
        String name = wording.name(id);
        String designation = fact.thing().any().designation();
        return wording.capitalised(designation != null && name.equals(id.text()) ? designation : name);
    }

    private String label(Asked fact) {
        String unit = Typing.unit(fact.field());
        return unit.isEmpty()
                ? fact.field().words()
                : wording.text("fact.label", fact.field().words(), unit);
    }

    private String now(Asked fact) {
        String value = value(fact);
        return value == null
                ? wording.text("fact.missing")
                : wording.text("survey.assumed", typing.text(fact.field(), value));
    }

    private @Nullable String value(Asked fact) {
        return marks.facts().find(fact.fact().toString()).orElse(null);
    }

    /** The same for programs; ends with a line break. */
    String json() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(Json.PRETTY, text)) {
            json.writeStartObject();
            json.writeNumberProperty("format", FORMAT);
            json.writeStringProperty("program", ProgramVersion.text());
            json.writeStringProperty(
                    "site", new SiteWriter(desk.fields()).digest(site).hex());
            json.writeArrayPropertyStart("facts");
            for (int i = 0; i < open.size(); i++) fact(json, i);
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    private void fact(JsonGenerator json, int index) {
        Asked fact = open.get(index);
        json.writeStartObject();
        json.writeNumberProperty("rank", index + 1);
        json.writeBooleanProperty("first", index < SurveyFacts.FIRST);
        json.writeStringProperty("path", fact.fact().toString());
        json.writeStringProperty("thing", fact.fact().thing().text());
        json.writeStringProperty("thingName", thing(fact));
        json.writeStringProperty("fact", fact.field().words());
        json.writeStringProperty("unit", fact.field().unit());
        json.writeStringProperty("mark", marks.of(fact.fact()).name());
        Json.text(json, "value", value(fact));
        json.writeStringProperty("source", fact.field().source().name());
        json.writeStringProperty("sourceWords", wording.word(fact.field().source()));
        json.writeNumberProperty("findings", waiting.findings(fact.fact()));
        json.writeEndObject();
    }
}
