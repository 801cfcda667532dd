package tideover.command.kept;

import java.time.Instant;

/**
 * A variant of a kept site.
 *
 * @param variant  its lasting name
 * @param site     the lasting name of its site
 * @param name     what it is called beside other variants
 * @param revision number of its newest revision
 */
public record KeptVariant(
        String variant, String site, String name, long revision, String designation, String country, Instant changed) {}
