/**
 * Site files: reading, checking, writing, and the one table of fields that drives all of it.
 *
 * <p>Reading goes bytes → nodes with line and column ({@link tideover.files.yaml}) → a variant's edits → values, each
 * checked against its row of {@code fields.csv} → references, loops, evidence → {@link tideover.engine.site.Site}. Every
 * problem of a file is reported in one go; nothing is built from a file that has one. A fact that is left out and has a
 * default in the table is filled in and carries evidence of origin {@code ASSUMED}.
 *
 * <p>Nothing here words a message: an {@link tideover.files.InputProblem} is a place and a phrase. Formats: YAML 1.2.2,
 * JSON (RFC 8259), JSON Schema draft 2020-12; numbers in canonical JSON are written as RFC 8785 says. No formulas of
 * the trade live here.
 */
@NullMarked
package tideover.files;

import org.jspecify.annotations.NullMarked;
