/**
 * Sites and how they became what they are: variants, revisions, changes, undo, search.
 *
 * <p>A revision is a whole site in canonical JSON, kept once under its digest; nothing is ever overwritten. Undo and redo
 * are revisions too, so they outlive a restart. {@link tideover.store.site.Sites} is the door. No formulas of the trade.
 */
@NullMarked
package tideover.store.site;

import org.jspecify.annotations.NullMarked;
