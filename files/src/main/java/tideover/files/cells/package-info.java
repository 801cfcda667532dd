/**
 * Facts as people type and paste them: one cell from words, units and shorthand of the trade to the value of its field and
 * back, and the circuit list as CSV.
 *
 * <p>Nothing here changes a site: what was typed becomes an {@link tideover.files.Edit} or an
 * {@link tideover.files.InputProblem}. Ranges, references and loops are judged by {@link tideover.files.SiteEdits}.
 *
 * <p>Sources: RFC 4180 (CSV); prefixes of the SI; curves of IEC 60898-1, gG of IEC 60269-1; S of IEC 61008-1.
 */
@NullMarked
package tideover.files.cells;

import org.jspecify.annotations.NullMarked;
