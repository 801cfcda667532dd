/**
 * The database under the store: one writer at a time and many readers, whole transactions, migrations, and the few
 * things in which one make of database differs from another.
 *
 * <p>SQL is written by hand, one statement a file under {@code tideover/store/sql}, and runs unchanged on SQLite and
 * PostgreSQL; what differs stands in {@code db/migration} and behind {@link tideover.store.database.Vendor}. What stops
 * a database from doing its work becomes a {@link tideover.store.database.StoreRefusal}. No formulas of the trade.
 */
@NullMarked
package tideover.store.database;

import org.jspecify.annotations.NullMarked;
