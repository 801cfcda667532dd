package tideover.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tideover.engine.rules.Digest;
import tideover.store.site.Revision;
import tideover.store.site.RevisionId;
import tideover.store.site.SiteRow;
import tideover.store.site.SiteSearch;
import tideover.store.site.VariantId;
import tideover.store.site.VariantRow;

/** What was acknowledged is there after {@code kill -9}, whenever it comes. */
@Tag("slow")
class KillTest {
    private static final int FOLDERS = 2;
    private static final int LIVES = 95;
    private static final int LONGEST_START_MILLIS = 700;
    private static final int MOST_SAVED = 12;
    /** About as long as two changes take. */
    private static final int LONGEST_WAIT_MILLIS = 30;

    @TempDir
    private Path folder;

    @Test
    void aWriterKilled190TimesLosesNothingItAcknowledged() throws Exception {
        // The moments differ from run to run, on purpose; the seed is printed with a failure.
        long seed = ThreadLocalRandom.current().nextLong();
        ScheduledExecutorService threads = Executors.newScheduledThreadPool(FOLDERS + 1);
        try {
            List<Future<Integer>> runs = new ArrayList<>();
            for (int i = 0; i < FOLDERS; i++) {
                int number = i;
                runs.add(
                        threads.submit(() -> new Lives(folder.resolve("data" + number), seed + number, threads).run()));
            }
            int acknowledged = 0;
            for (Future<Integer> run : runs) acknowledged += run.get();
            // Far fewer would mean that the writers were killed before they wrote anything.
            assertThat(acknowledged).as("seed %d", seed).isGreaterThan(FOLDERS * LIVES);
        } catch (ExecutionException e) {
            throw new AssertionError("seed " + seed, e);
        } finally {
            threads.shutdownNow();
        }
    }

    /** One folder and the writers that live and die in it. */
    private static final class Lives {
        private final Path data;
        private final Path scratch;
        private final Random random;
        private final ScheduledExecutorService killer;
        private final Map<RevisionId, Digest> acknowledged = new HashMap<>();
        private final Set<RevisionId> unchecked = new HashSet<>();
        private int made;

        Lives(Path data, long seed, ScheduledExecutorService killer) throws IOException {
            this.data = data;
            this.scratch = Files.createDirectories(data.resolveSibling(data.getFileName() + "-scratch"));
            this.random = new Random(seed);
            this.killer = killer;
        }

        Integer run() throws SQLException {
            for (int life = 0; life < LIVES; life++) {
                live();
                // After every other life the next writer is the first to open what the killed one left.
                if (life % 2 == 0) glance();
            }
            inspect();
            return acknowledged.size();
        }

        private void live() {
            // One in three dies while it opens the store; the others amid a change, after some that it acknowledged.
            boolean early = random.nextInt(3) == 0;
            int left = early ? Integer.MAX_VALUE : random.nextInt(MOST_SAVED);
            int moment = random.nextInt(early ? LONGEST_START_MILLIS : LONGEST_WAIT_MILLIS);
            // Every other early death is that of a store that is only being made.
            Path where = early && random.nextBoolean() ? scratch.resolve("new" + ++made) : data;
            try (Child child = Child.start(where, scratch, random.nextLong())) {
                if (early) killer.schedule(child::kill, moment, TimeUnit.MILLISECONDS);
                for (String line = child.line(); line != null; line = child.line()) {
                    assertThat(line).doesNotStartWith("refused");
                    if (line.startsWith("saved") && where.equals(data)) note(line.split(" "));
                    if (left-- == 0) killer.schedule(child::kill, moment, TimeUnit.MILLISECONDS);
                }
                assertThat(child.waited()).as("killed, and not ended by itself").isEqualTo(128 + 9);
            }
            if (!where.equals(data)) Store.open(where, TestSites.TABLE).close();
        }

        private void note(String[] saved) {
            RevisionId id = new RevisionId(new VariantId(saved[1]), Long.parseLong(saved[2]));
            acknowledged.put(id, new Digest(saved[3]));
            unchecked.add(id);
        }

        /** Cheaply: the pages hold together, and what was acknowledged since the last glance is there. */
        private void glance() throws SQLException {
            // A writer killed before its first breath leaves no file, or one without tables.
            if (unchecked.isEmpty()) return;
            try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + data.resolve(Store.FILE));
                    ResultSet check = connection.createStatement().executeQuery("PRAGMA quick_check");
                    PreparedStatement find = connection.prepareStatement(
                            "SELECT body_digest FROM revision WHERE variant_id = ? AND number = ?")) {
                assertThat(check.getString(1)).isEqualTo("ok");
                for (RevisionId id : unchecked) {
                    find.setString(1, id.variant().text());
                    find.setLong(2, id.number());
                    try (ResultSet row = find.executeQuery()) {
                        assertThat(row.next()).as("revision %s", id).isTrue();
                        assertThat(new Digest(row.getString(1))).isEqualTo(acknowledged.get(id));
                    }
                }
            }
            unchecked.clear();
        }

        /** Everything: every page, every revision, every chain without a gap, every acknowledgement. */
        private void inspect() {
            try (Store store = Store.open(data, TestSites.TABLE)) {
                store.verify();
                Map<RevisionId, Digest> kept = new HashMap<>();
                for (SiteRow site : store.sites().list(new SiteSearch("", SiteSearch.Shelf.BOTH, Integer.MAX_VALUE)))
                    for (VariantRow variant : site.variants()) {
                        List<Revision> revisions = store.sites().revisions(variant.id());
                        assertThat(revisions)
                                .extracting(Revision::number)
                                .containsExactlyElementsOf(LongStream.rangeClosed(1, variant.head())
                                        .boxed()
                                        .toList());
                        for (Revision revision : revisions) kept.put(revision.id(), revision.digest());
                    }
                assertThat(kept).containsAllEntriesOf(acknowledged);
            }
        }
    }
}
