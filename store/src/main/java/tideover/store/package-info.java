/**
 * Keeping: one data folder with one database file, and the one process that owns it.
 *
 * <p>{@link tideover.store.Store} opens it. Sites and their revisions are in {@code site}, the database under them in
 * {@code database}. No clock is read here: who and when are told. No formulas of the trade.
 */
@NullMarked
package tideover.store;

import org.jspecify.annotations.NullMarked;
