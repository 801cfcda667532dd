package tideover.command;

import java.io.StringWriter;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
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
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** An assessment as JSON for machines; the form is described in docs/findings-json.md and only ever grows. */
final class AssessmentJson {

    /** Raised when a field changes its meaning or goes. */
    private static final int FORMAT = 1;

    private final Wording wording;
    private final Assessment assessment;
    private final Digest site;

    AssessmentJson(Wording wording, Assessment assessment, Digest site) {
        this.wording = wording.with(assessment.installation());
        this.assessment = assessment;
        this.site = site;
    }

    /** The text, ending with a line break. */
    String text() {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(new Pretty(), text)) {
            json.writeStartObject();
            json.writeNumberProperty("format", FORMAT);
            json.writeStringProperty("program", Version.text());
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
        text(
                json,
                "state",
                finding.key().state() == null ? null : finding.key().state().name());
        json.writeStringProperty("outcome", finding.outcome().name());
        json.writeStringProperty("force", finding.force().name());
        Finding.Measure measure = finding.measure();
        number(json, "value", measure == null ? null : measure.value());
        number(json, "limit", measure == null ? null : measure.limit());
        text(json, "unit", measure == null ? null : measure.unit().name());
        Source source = finding.source();
        text(json, "clause", source == null ? null : source.clause());
        text(json, "source", source == null ? null : source.document());
        text(json, "verification", source == null ? null : source.verification().name());
        array(json, "facts", finding.facts(), FactId::toString);
        array(json, "assumptions", finding.assumptions(), FactId::toString);
        json.writeArrayPropertyStart("missing");
        for (Missing missing : finding.missing()) missing(json, missing);
        json.writeEndArray();
        json.writeStringProperty("sentence", wording.of(finding));
        text(json, "accepted", finding.accepted());
        List<Phrase> calculation = assessment.calculations().get(finding.key());
        if (calculation != null) array(json, "calculation", calculation, wording::of);
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

    private static <T> void array(JsonGenerator json, String name, List<T> items, Function<T, String> text) {
        json.writeArrayPropertyStart(name);
        for (T item : items) json.writeString(text.apply(item));
        json.writeEndArray();
    }

    private static void text(JsonGenerator json, String name, @Nullable String value) {
        if (value == null) json.writeNullProperty(name);
        else json.writeStringProperty(name, value);
    }

    /** JSON has no infinity: what never ends is null, and the unit still says of what. */
    private static void number(JsonGenerator json, String name, @Nullable Double value) {
        if (value == null || value.isInfinite()) json.writeNullProperty(name);
        else json.writeNumberProperty(name, value);
    }

    /** Lines a person can read and a version control can compare. */
    private static final class Pretty extends ObjectWriteContext.Base {
        @Override
        public PrettyPrinter getPrettyPrinter() {
            return new DefaultPrettyPrinter();
        }

        @Override
        public boolean hasPrettyPrinter() {
            return true;
        }
    }
}
