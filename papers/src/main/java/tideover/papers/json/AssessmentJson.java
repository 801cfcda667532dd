package tideover.papers.json;

import java.io.StringWriter;
import java.util.List;
import tideover.engine.assessment.Assessment;
import tideover.engine.rules.Digest;
import tideover.engine.rules.Finding;
import tideover.engine.rules.Missing;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.Source;
import tideover.engine.site.FactId;
import tideover.papers.Wording;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** An assessment as JSON for machines; the form is described in docs/findings-json.md and only ever grows. */
public final class AssessmentJson {

    /** Raised when a field changes its meaning or goes. */
    private static final int FORMAT = 1;

    private final Wording wording;
    private final Assessment assessment;
    private final Digest site;

    /** @param site digest of the canonical JSON of the site */
    public AssessmentJson(Wording wording, Assessment assessment, Digest site) {
        this.wording = wording.with(assessment.installation());
        this.assessment = assessment;
        this.site = site;
    }

    /** The text, ending with a line break. */
    public String text() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(Json.PRETTY, text)) {
            json.writeStartObject();
            json.writeNumberProperty("format", FORMAT);
            json.writeStringProperty("program", ProgramVersion.text());
            json.writeStringProperty("site", site.hex());
            json.writeStringProperty("rules", assessment.rules().digest().hex());
            json.writeArrayPropertyStart("ruleBooks");
            assessment.rules().layers().forEach(json::writeString);
            json.writeEndArray();
            verdict(json);
            json.writeArrayPropertyStart("findings");
            for (Finding finding : assessment.findings()) finding(json, finding);
            json.writeEndArray();
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    private void verdict(JsonGenerator json) {
        json.writeStringProperty("verdict", assessment.verdict().outcome().name());
        json.writeObjectPropertyStart("counts");
        for (Outcome outcome : Outcome.values())
            json.writeNumberProperty(
                    outcome.name(), assessment.verdict().counts().getOrDefault(outcome, 0));
        json.writeNumberProperty("advice", assessment.verdict().advice());
        json.writeNumberProperty("onAssumptions", assessment.verdict().onAssumptions());
        json.writeNumberProperty("assumptions", assessment.verdict().assumptions());
        json.writeNumberProperty("onLimitsNotCompared", assessment.verdict().onUncompared());
        json.writeEndObject();
    }

    private void finding(JsonGenerator json, Finding finding) {
        json.writeStartObject();
        json.writeStringProperty("check", finding.key().check());
        json.writeStringProperty("place", finding.key().place().text());
        json.writeStringProperty("placeName", wording.name(finding.key().place()));
        Json.text(
                json,
                "state",
                finding.key().state() == null ? null : finding.key().state().name());
        json.writeStringProperty("outcome", finding.outcome().name());
        json.writeStringProperty("force", finding.force().name());
        Finding.Measure measure = finding.measure();
        Json.number(json, "value", measure == null ? null : measure.value());
        Json.number(json, "limit", measure == null ? null : measure.limit());
        Json.text(json, "unit", measure == null ? null : measure.unit().name());
        Source source = finding.source();
        Json.text(json, "clause", source == null ? null : source.clause());
        Json.text(json, "source", source == null ? null : source.document());
        Json.text(
                json,
                "verification",
                source == null ? null : source.verification().name());
        Json.array(json, "facts", finding.facts(), FactId::toString);
        Json.array(json, "assumptions", finding.assumptions(), FactId::toString);
        json.writeArrayPropertyStart("missing");
        for (Missing missing : finding.missing()) missing(json, missing);
        json.writeEndArray();
        json.writeStringProperty("sentence", wording.of(finding));
        Json.text(json, "accepted", finding.accepted());
        List<Phrase> calculation = assessment.calculations().get(finding.key());
        if (calculation != null) Json.array(json, "calculation", calculation, wording::of);
        json.writeEndObject();
    }

    private static void missing(JsonGenerator json, Missing missing) {
        json.writeStartObject();
        if (missing instanceof Missing.UnknownFact m) {
            json.writeStringProperty("unknownFact", m.fact().toString());
        } else if (missing instanceof Missing.AssumedFact m) {
            json.writeStringProperty("assumedFact", m.fact().toString());
        } else if (missing instanceof Missing.OperatorAnswer m) {
            json.writeStringProperty("operatorAnswer", m.fact().toString());
        } else if (missing instanceof Missing.UnknownLimit m) {
            json.writeStringProperty("unknownLimit", m.limit());
        }
        json.writeEndObject();
    }
}
