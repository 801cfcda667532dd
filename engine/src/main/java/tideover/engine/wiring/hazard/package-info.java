/**
 * Judges what the wiring model finds: hazards over all states the healthy house can reach and the ways between, and what
 * the failure of one switching device or of the control supply leads to.
 *
 * <p>How long a hazard may last in a transition is a limit of the rule book.
 */
@NullMarked
package tideover.engine.wiring.hazard;

import org.jspecify.annotations.NullMarked;
