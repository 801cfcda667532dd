package tideover.bench;

import java.io.IOException;
import java.nio.file.Path;

/** What the workbench keeps in memory after many edits of many sites. */
record WebMemory(WebEdits edits) implements Benchmark {

    @Override
    public String name() {
        return "web-memory";
    }

    @Override
    public String meaning() {
        return "memory resident of the workbench's process, after the edits of `web-p95`";
    }

    @Override
    public String unit() {
        return "MB";
    }

    @Override
    public Aim aim() {
        return Aim.below(450);
    }

    @Override
    public Measurement run(Path file) throws IOException {
        WebEdits.Outcome outcome = edits.run(file);
        return outcome.residentMb().isPresent()
                ? new Figure(outcome.residentMb().getAsDouble(), outcome.work(), outcome.digest())
                : new NotMeasured("this system does not tell what a process keeps in memory");
    }
}
