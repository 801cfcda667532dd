package tideover.command;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Digest;
import tideover.engine.rules.PhraseArg;
import tideover.papers.diagnosis.CallFact;
import tideover.papers.diagnosis.CallNode;
import tideover.papers.diagnosis.CallSheet;
import tideover.papers.diagnosis.CallSheet.Answer;
import tideover.papers.diagnosis.CallText;
import tideover.papers.diagnosis.CallTrees;
import tideover.papers.json.Json;
import tideover.papers.json.ProgramVersion;
import tideover.papers.wiring.WiringModel;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.json.JsonFactory;

/** The tree of one trouble, walked as far as answers are given; its JSON is described in docs/wiring-model.md. */
final class FaultCall {

    /** Raised when a field changes its meaning or goes. */
    private static final int FORMAT = 1;

    private final Desk desk;
    private final String trouble;
    private final CallNode root;
    private final List<Answer> answers;
    private final CallSheet sheet;

    /** @throws Refusal if there is no such tree, or an answer is none */
    FaultCall(Desk desk, WiringModel model, String trouble, List<String> answers) {
        this.desk = desk;
        this.trouble = trouble.toLowerCase(java.util.Locale.ROOT);
        CallTrees trees = CallTrees.load();
        this.root = trees.find(this.trouble)
                .orElseThrow(() -> refusal("call.unknown", trouble, String.join(", ", trees.troubles())));
        this.answers = answers(answers);
        this.sheet = new CallSheet(model);
    }

    private Refusal refusal(String key, String... texts) {
        return new Refusal(List.of(desk.sentence(key, texts)));
    }

    private List<Answer> answers(List<String> given) {
        List<Answer> all = new ArrayList<>();
        CallNode node = root;
        for (String each : given) {
            boolean isYes = each.strip().equalsIgnoreCase("yes");
            if (!isYes && !each.strip().equalsIgnoreCase("no")) throw refusal("call.noAnswer", each);
            CallNode next = isYes ? node.yes() : node.no();
            if (next == null)
                throw new Refusal(List.of(desk.wording().text("call.tooMany", PhraseArg.count(all.size()))));
            all.add(isYes ? Answer.YES : Answer.NO);
            node = next;
        }
        return all;
    }

    String text() {
        return CallText.of(trouble, root, answers, sheet);
    }

    /** The part of the tree that the answers leave. */
    String json(Digest site) {
        CallNode node = root;
        for (Answer answer : answers) {
            CallNode next = answer == Answer.YES ? node.yes() : node.no();
            if (next != null) node = next;
        }
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(Json.PRETTY, text)) {
            json.writeStartObject();
            json.writeNumberProperty("format", FORMAT);
            json.writeStringProperty("program", ProgramVersion.text());
            json.writeStringProperty("site", site.hex());
            json.writeStringProperty("trouble", trouble);
            json.writeStringProperty("title", sheet.title(trouble));
            node(json, "tree", node);
            json.writeEndObject();
        }
        return text.append('\n').toString();
    }

    private void node(JsonGenerator json, String name, @Nullable CallNode node) {
        if (node == null) return;
        json.writeObjectPropertyStart(name);
        json.writeStringProperty("id", node.id());
        json.writeStringProperty("text", sheet.text(node));
        json.writeStringProperty("caution", node.caution().name());
        json.writeArrayPropertyStart("facts");
        for (CallFact fact : node.facts()) {
            json.writeStartObject();
            json.writeStringProperty("fact", fact.name());
            Json.array(json, "lines", sheet.facts(fact), line -> line);
            json.writeEndObject();
        }
        json.writeEndArray();
        node(json, "yes", node.yes());
        node(json, "no", node.no());
        json.writeEndObject();
    }
}
