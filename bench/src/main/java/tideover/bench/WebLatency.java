package tideover.bench;

import java.io.IOException;
import java.nio.file.Path;

/** How long an edit takes in the workbench while many are made: the ninety-fifth of a hundred. */
record WebLatency(WebEdits edits) implements Benchmark {

    @Override
    public String name() {
        return "web-p95";
    }

    @Override
    public String meaning() {
        return "an edit in the workbench, from the moment it is due to the sheet with its margin, durably kept; 25 a second; "
                + "the 95th of a hundred";
    }

    @Override
    public String unit() {
        return "ms";
    }

    @Override
    public Aim aim() {
        return Aim.below(100);
    }

    @Override
    public Figure run(Path file) throws IOException {
        WebEdits.Outcome outcome = edits.run(file);
        return Figure.of(outcome.p95Ms(), outcome.work(), outcome.digest());
    }
}
