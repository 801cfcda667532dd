/**
 * The one-line diagram: the whole installation on one sheet, the islanding switch a double line across it.
 *
 * <p>Above the line lies what is fed behind an islanding switch, below it what is not; sources stand left, circuits in
 * one column right. Two graphs, one for each side, are laid out by a layered layout; what comes of it is painted by a
 * {@link tideover.papers.drawing.Pen}, as SVG or into a PDF page, in millimetres on a sheet of ISO 216. Symbols follow
 * IEC 60617 (from memory), conductor strokes IEC 60617-3. With an operating state given, live parts are drawn strong
 * and dead ones thin and dashed, and contacts stand in their position. No formulas live here.
 */
@NullMarked
package tideover.papers.diagram;

import org.jspecify.annotations.NullMarked;
