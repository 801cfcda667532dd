/**
 * Sites being worked on: the newest revision of each with its judgement, kept until another takes its place. What is
 * judged at once is there with the edit; slow findings are computed one after the other in the background.
 */
@NullMarked
package tideover.web.work;

import org.jspecify.annotations.NullMarked;
