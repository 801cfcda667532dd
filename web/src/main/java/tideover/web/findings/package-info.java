/**
 * Every finding of a site: all of them in the order in which they ask for something, and each with its calculation, its
 * clause and the facts it rests on. Nothing is judged here.
 */
@NullMarked
package tideover.web.findings;

import org.jspecify.annotations.NullMarked;
