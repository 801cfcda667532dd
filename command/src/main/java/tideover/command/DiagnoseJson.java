package tideover.command;

import java.io.StringWriter;
import java.util.List;
import tideover.engine.rules.Digest;
import tideover.papers.json.Json;
import tideover.papers.json.ProgramVersion;
import tideover.papers.json.WiringJson;
import tideover.papers.wiring.Listing;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** What fits an observation as JSON for machines; the form is described in docs/wiring-model.md and only ever grows. */
final class DiagnoseJson {

    /** Raised when a field changes its meaning or goes. */
    private static final int FORMAT = 1;

    private final Digest site;
    private final List<Listing> listings;

    DiagnoseJson(Digest site, List<Listing> listings) {
        this.site = site;
        this.listings = listings;
    }

    /** The text, ending with a line break. */
    String text() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(Json.PRETTY, text)) {
            json.writeStartObject();
            json.writeNumberProperty("format", FORMAT);
            json.writeStringProperty("program", ProgramVersion.text());
            json.writeStringProperty("site", site.hex());
            json.writeArrayPropertyStart("parts");
            for (Listing listing : listings) WiringJson.listing(json, listing);
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }
}
