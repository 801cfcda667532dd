package tideover.papers;

import java.time.LocalDate;
import tideover.engine.rules.Digest;

/**
 * What every paper bears, so that it is known what it was made from.
 *
 * @param revision digest of the site it was made from
 * @param date     day it was made; handed in, as papers ask no clock
 */
public record Stamp(Digest revision, LocalDate date) {}
