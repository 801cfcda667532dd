/**
 * The steps of commissioning run on the wiring model: in which situation which readings are taken, and what each should
 * show. What a reading should show is computed from the healthy model, never typed.
 *
 * <p>Inspection, dead tests, switching with all outgoing breakers off, then circuit by circuit, as in IEC 60364-6 and
 * common practice. Order by prerequisites, real readings and their judgement are another matter.
 */
@NullMarked
package tideover.engine.wiring.procedure;

import org.jspecify.annotations.NullMarked;
