/**
 * Documents: the handover file of a site and the letter to its grid operator, as PDF.
 *
 * <p>Each paper is a template in the resources beside this package, filled with rows made here and printed by
 * {@link tideover.papers.handover.Press}. Its words are in {@code handover.properties}. A new paper is one template and
 * the class that gathers what it shows. No formulas live here; findings hold in the states they name, and which circuit
 * stays on is asked of the netlist. Sheets are those of ISO 216.
 */
@NullMarked
package tideover.papers.handover;

import org.jspecify.annotations.NullMarked;
