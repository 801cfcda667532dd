/**
 * The tables of the standards as CSV beside the program, and what reads them into the engine's types.
 *
 * <p>Each row keeps the figures and the unit of its source and ends with document, place and verification. Formulas
 * live in {@link tideover.engine.network} and {@link tideover.engine.protection}; docs/sources.md says which file won
 * where sources differ.
 */
@NullMarked
package tideover.files.tables;

import org.jspecify.annotations.NullMarked;
