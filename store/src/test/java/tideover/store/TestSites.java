package tideover.store;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import tideover.engine.site.Site;
import tideover.files.FieldTable;
import tideover.files.SiteEdits;
import tideover.files.SiteFileResult;
import tideover.files.SiteFiles;
import tideover.store.database.LogEntry;

/** A small invented house, and short forms of what the tests ask for. */
final class TestSites {
    static final FieldTable TABLE = FieldTable.load();
    static final SiteEdits EDITS = new SiteEdits(TABLE);

    static final String HOUSE = """
            format: 1
            house:
              place: {designation: Larch lane 4, country: DE}
              supply: {earthingSystem: TN_S, lines: THREE, mainFuse: {kind: FUSE, ratedCurrentA: 35}}
              boards:
                - {id: board, designation: Board, fedFrom: supply, conductors: [L1, L2, L3, N, PE]}
              circuits:
                - id: oven
                  designation: Oven
                  fedFrom: board
                  conductors: [L1, N, PE]
                  cable: {lengthM: 12, crossSectionMm2: 2.5}
                - id: lights
                  designation: Lights
                  fedFrom: board
                  conductors: [L2, N, PE]
                  cable: {lengthM: 20, crossSectionMm2: 1.5}
            """;

    private static final Instant MORNING = Instant.parse("2026-11-30T07:00:00.123Z");

    private TestSites() {}

    static Site house() {
        return site(HOUSE);
    }

    /** The house under another designation. */
    static Site house(String designation) {
        return site(HOUSE.replace("Larch lane 4", designation));
    }

    static Site site(String text) {
        SiteFileResult result = new SiteFiles(TABLE).read("house.yaml", text.getBytes(StandardCharsets.UTF_8));
        if (result instanceof SiteFileResult.Readable readable) return readable.site();
        throw new AssertionError(result);
    }

    static String value(Site site, String path) {
        return EDITS.find(site, path).orElse("");
    }

    /** An entry some minutes into the morning. */
    static LogEntry at(int minute) {
        return by("Kim", minute);
    }

    static LogEntry by(String who, int minute) {
        return LogEntry.of(who, MORNING.plusSeconds(60L * minute));
    }
}
