package tideover.engine.wiring.schedule;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import tideover.engine.installation.Installation;
import tideover.engine.site.ThingId;

/**
 * The power wiring that the job touches: every conductor of what is new, altered in its wiring, or connected to a new
 * device; links, by-pass and measuring neutrals among them.
 *
 * @param rows run by run, from the grid inwards, circuits and inverters last; then by-pass, links, earths and measuring neutrals
 */
public record PowerSchedule(List<PowerRow> rows) {

    public PowerSchedule {
        rows = List.copyOf(rows);
    }

    /** The schedule of a site as planned and built. */
    public static PowerSchedule of(Installation installation, WiringTables tables) {
        return new PowerSchedule(new PowerRuns(installation, tables).rows());
    }

    /** The rows of one run. */
    public List<PowerRow> run(String run) {
        return rows.stream().filter(row -> row.run().equals(run)).toList();
    }

    /** Rows that begin or end at a thing. */
    public List<PowerRow> at(ThingId thing) {
        return rows.stream()
                .filter(row ->
                        row.from().thing().equals(thing) || row.to().thing().equals(thing))
                .toList();
    }

    /** Names of all runs. */
    public List<String> runs() {
        Set<String> runs = new LinkedHashSet<>();
        rows.forEach(row -> runs.add(row.run()));
        return new ArrayList<>(runs);
    }
}
