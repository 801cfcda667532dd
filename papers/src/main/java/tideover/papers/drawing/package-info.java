/**
 * What all drawings are made with: a pen that writes SVG or into a PDF page, inks, line weights, the typeface, and symbols
 * after IEC 60617 (from memory). Lengths in millimetres; looks as the papers have them. No formulas live here.
 */
@NullMarked
package tideover.papers.drawing;

import org.jspecify.annotations.NullMarked;
