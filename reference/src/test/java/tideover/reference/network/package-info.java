/**
 * The four-wire solver against general libraries: reads the reference cases, solves each with ours, compares every
 * voltage and current, and holds the laws of Kirchhoff and of conservation of energy on each.
 *
 * <p>Where the expected values come from, and how they are made anew, says the README.md beside the cases.
 */
@NullMarked
package tideover.reference.network;

import org.jspecify.annotations.NullMarked;
