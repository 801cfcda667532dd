/**
 * Results for other programs: what command line and workbench give as JSON, with what all of it has in common. The forms are
 * described in docs and only ever grow. No formulas.
 */
@NullMarked
package tideover.papers.json;

import org.jspecify.annotations.NullMarked;
