/**
 * The fault call turned round: from what is seen to the mistakes that explain it, and which reading to take next. It works
 * on the dictionary of all single mistakes and what each reading would show with them.
 */
@NullMarked
package tideover.engine.wiring.diagnosis;

import org.jspecify.annotations.NullMarked;
