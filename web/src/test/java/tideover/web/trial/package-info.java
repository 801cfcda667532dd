/**
 * What tests of the workbench stand on: a real workbench over a real folder, a real browser, and nothing in between.
 *
 * <p>A test of pages extends {@link tideover.web.trial.BrowserTest}; one of answers alone opens a
 * {@link tideover.web.trial.Desk} and asks as a {@link tideover.web.trial.Visitor}.
 */
@NullMarked
package tideover.web.trial;

import org.jspecify.annotations.NullMarked;
