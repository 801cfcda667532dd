/**
 * The fault call in the workbench: the short tree of what a caller has, one question at a time, and the mistakes that fit what was
 * seen. What was answered and seen stands in the address; nothing is kept.
 */
@NullMarked
package tideover.web.diagnosis;

import org.jspecify.annotations.NullMarked;
