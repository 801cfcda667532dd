package tideover.store.site;

import org.jspecify.annotations.Nullable;

/**
 * What undo and redo would do now.
 *
 * @param head the newest revision
 * @param undo the revision that undo takes back; nothing where there is none
 * @param redo the revision that redo brings back; nothing where there is none
 */
public record Steps(
        Revision head, @Nullable Revision undo, @Nullable Revision redo) {}
