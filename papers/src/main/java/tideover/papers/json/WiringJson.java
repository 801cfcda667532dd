package tideover.papers.json;

import java.io.StringWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.engine.rules.RuleBook;
import tideover.papers.wiring.Cell;
import tideover.papers.wiring.Listing;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** Wiring lists as JSON for machines; the form is described in docs/wiring-lists.md and only ever grows. */
public final class WiringJson {

    /** Raised when a field changes its meaning or goes. */
    private static final int FORMAT = 1;

    private final Digest site;
    private final RuleBook rules;
    private final List<Listing> listings;

    /** @param site digest of the canonical JSON of the site */
    public WiringJson(Digest site, RuleBook rules, List<Listing> listings) {
        this.site = site;
        this.rules = rules;
        this.listings = listings;
    }

    /** The text, ending with a line break. */
    public String text() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(Json.PRETTY, text)) {
            json.writeStartObject();
            json.writeNumberProperty("format", FORMAT);
            json.writeStringProperty("program", ProgramVersion.text());
            json.writeStringProperty("site", site.hex());
            json.writeStringProperty("rules", rules.digest().hex());
            json.writeArrayPropertyStart("parts");
            for (Listing listing : listings) listing(json, listing);
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    /** Writes one listing as an object. */
    public static void listing(JsonGenerator json, Listing listing) {
        json.writeStartObject();
        json.writeStringProperty("part", listing.part());
        json.writeArrayPropertyStart("rows");
        for (Listing.Group group : listing.groups())
            for (List<Cell> row : group.rows()) {
                json.writeStartObject();
                Json.text(json, "group", group.title());
                for (int i = 0; i < row.size(); i++)
                    if (listing.columns().get(i).isData())
                        value(json, listing.columns().get(i).field(), row.get(i).value());
                json.writeEndObject();
            }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void value(JsonGenerator json, String field, @Nullable Object value) {
        if (value instanceof Double number) Json.number(json, field, number);
        else if (value instanceof Integer number) json.writeNumberProperty(field, number);
        else Json.text(json, field, value == null ? null : value.toString());
    }
}
