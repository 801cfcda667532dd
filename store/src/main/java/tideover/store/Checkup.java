package tideover.store;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import tideover.files.FieldTable;
import tideover.store.attachment.Attachments;
import tideover.store.database.Database;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;
import tideover.store.site.Sites;

/** Reads everything that is kept: pages, revisions, attachments; whatever is not as it was written is refused. */
final class Checkup {
    private final FieldTable table;

    Checkup(FieldTable table) {
        this.table = table;
    }

    /** A database in a file, which is lifted where it is of an older program. */
    void check(Path file) throws IOException {
        try (Database database = Database.inFile(file)) {
            check(database);
        }
    }

    void check(Database database) {
        List<String> troubles = database.troubles();
        if (!troubles.isEmpty()) throw StoreRefusal.of(Reason.DAMAGED, database.name(), troubles.get(0));
        // With nothing at hand: what counts is what is on the disk.
        new Sites(database, table).verify();
        new Attachments(database).verify();
    }
}
