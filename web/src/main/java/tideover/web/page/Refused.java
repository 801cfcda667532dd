package tideover.web.page;

import org.jspecify.annotations.Nullable;

/**
 * What the store could not do.
 *
 * @param sentence why, and what is to be done
 * @param again    what was sent; nothing where it cannot be sent again from here
 */
public record Refused(
        Frame frame, String sentence, @Nullable Again again) {}
