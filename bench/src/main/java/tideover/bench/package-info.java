/**
 * Measures how fast the program is on a real-sized house, behind {@code ./measure}.
 *
 * <p>Rules of every benchmark: what is timed is work a user waits for; there is a warm-up or a whole new process; the
 * median of several rounds counts; no round sees an input that an earlier one saw, and none is answered from an
 * earlier result. How much work was done and a digest of what came out stand beside each figure, so that a program
 * that got faster by doing less is found out.
 */
@NullMarked
package tideover.bench;

import org.jspecify.annotations.NullMarked;
