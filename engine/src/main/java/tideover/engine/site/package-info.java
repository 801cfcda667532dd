/**
 * One house as plain data: what was found, what is planned, and who or what says so.
 *
 * <p>A {@link tideover.engine.site.Site} holds a {@link tideover.engine.site.House} (as found), a
 * {@link tideover.engine.site.Plan} (what becomes of it) and the {@link tideover.engine.site.Evidence} for single
 * facts. Everything is immutable; a fact that nobody has surveyed yet is {@code null} and never zero. The status of a
 * thing (existing, altered, new, removed) is not written down but follows from where it is stated.
 *
 * <p>Words follow IEC 60364, IEC 60364-8-82 and IEC 60050-826. No formulas live here.
 */
@NullMarked
package tideover.engine.site;

import org.jspecify.annotations.NullMarked;
