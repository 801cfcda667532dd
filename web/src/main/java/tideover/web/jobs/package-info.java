/**
 * Long work: one at a time of each kind, its progress told in words, ended when it is cancelled, its results kept for a while
 * in memory. What is not fetched before the workbench stops is made anew.
 */
@NullMarked
package tideover.web.jobs;

import org.jspecify.annotations.NullMarked;
