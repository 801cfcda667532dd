package tideover.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.store.site.VariantId;
import tideover.web.trial.Program;
import tideover.web.trial.ServedProcess;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Over the HTTP API, with the key. */
class HandOfProgram implements Hand {
    private static final JsonMapper JSON = new JsonMapper();

    private final String address;
    private @Nullable Program program;

    HandOfProgram(VariantId variant) {
        this.address = "/api/sites/" + variant;
    }

    @Override
    public void open(ServedProcess workbench) {
        program = workbench.program();
    }

    @Override
    public long take(Step step, long base, int before, int after) {
        Map<String, Object> edit =
                Map.of("path", FACT, "before", Integer.toString(before), "after", Integer.toString(after));
        Map<String, Object> body =
                step == Step.EDIT ? Map.of("base", base, "edits", List.of(edit)) : Map.of("base", base);
        String last = step == Step.EDIT ? "/edits" : "/" + step.word();
        JsonNode answer = read(Objects.requireNonNull(program).post(address + last, JSON.writeValueAsString(body)));
        assertThat(answer.path("saved").asBoolean()).as("%s", answer).isTrue();
        return answer.at("/revision/revision").asLong();
    }

    @Override
    public int value(Program asked) {
        return Integer.parseInt(facts(asked).at("/facts/0/value").asString());
    }

    @Override
    public long head(Program asked) {
        return facts(asked).path("revision").asLong();
    }

    private JsonNode facts(Program asked) {
        return read(asked.get(address + "/facts?path=" + FACT));
    }

    private static JsonNode read(HttpResponse<byte[]> answer) {
        String text = Program.text(answer);
        assertThat(answer.statusCode()).as(text).isEqualTo(200);
        return JSON.readTree(text);
    }
}
