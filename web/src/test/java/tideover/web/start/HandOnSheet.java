package tideover.web.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.store.site.VariantId;
import tideover.web.trial.ServedProcess;
import tideover.web.trial.Visitor;

/** On the circuits sheet, with the cookie; what the sheet shows is what counts. */
final class HandOnSheet extends HandOfProgram {
    private static final Pattern CELL =
            Pattern.compile("data-path=\"([^\"]*\\." + FACT.replace(".", "\\.") + ")\" data-was=\"([^\"]*)\"");
    private static final Pattern BASE = Pattern.compile("data-base=\"([0-9]+)\"");

    private final String sheet;
    private @Nullable Visitor visitor;
    private String token = "";
    private String path = "";

    HandOnSheet(VariantId variant) {
        super(variant);
        this.sheet = "/sites/" + variant + "/circuits";
    }

    @Override
    public void open(ServedProcess workbench) {
        super.open(workbench);
        visitor = workbench.visitor();
        token = visitor.formToken();
        path = found(CELL, visitor.read(sheet), 1);
    }

    @Override
    public long take(Step step, long base, int before, int after) {
        HttpResponse<String> answer = ask(step, base, before, after);
        path = found(CELL, answer, 1);
        assertThat(found(CELL, answer, 2)).isEqualTo(Integer.toString(after));
        return Long.parseLong(found(BASE, answer, 1));
    }

    /** The same, whatever the answer is. */
    HttpResponse<String> ask(Step step, long base, int before, int after) {
        String address = step == Step.EDIT ? sheet : sheet + "/" + step.word();
        return Objects.requireNonNull(visitor)
                .ask(
                        address,
                        token,
                        "base",
                        Long.toString(base),
                        "path",
                        path,
                        "was",
                        Integer.toString(before),
                        "typed",
                        Integer.toString(after));
    }

    private static String found(Pattern wanted, HttpResponse<String> answer, int group) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
        Matcher matcher = wanted.matcher(answer.body());
        assertThat(matcher.find()).as(answer.body()).isTrue();
        return matcher.group(group);
    }
}
