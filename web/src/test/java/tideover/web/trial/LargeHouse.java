package tideover.web.trial;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The terraced house with many more circuits: work on it takes long enough to be stopped. */
public final class LargeHouse {
    private static final String LAST = "    - id: smoke-alarms";

    private LargeHouse() {}

    /** A site file with so many circuits more. */
    public static String with(int circuits) {
        List<String> lines;
        try {
            lines = Files.readAllLines(Path.of("..", "examples", "terrace.yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        int from = lines.indexOf(LAST);
        int to = lines.indexOf("plan:");
        if (from < 0 || to < from) throw new AssertionError("the example is not written as it was");
        List<String> all = new ArrayList<>(lines.subList(0, to));
        for (int i = 1; i <= circuits; i++)
            for (String line : lines.subList(from, to))
                all.add(line.replace("smoke-alarms", "alarms-" + i).replace("Smoke alarms", "Alarms " + i));
        all.addAll(lines.subList(to, lines.size()));
        return String.join("\n", all) + "\n";
    }
}
