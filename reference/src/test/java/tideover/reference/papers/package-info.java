/**
 * The papers held against what a careful person would hand over: drawings read back from their SVG, letters measured with
 * the typeface they are set in.
 */
@NullMarked
package tideover.reference.papers;

import org.jspecify.annotations.NullMarked;
