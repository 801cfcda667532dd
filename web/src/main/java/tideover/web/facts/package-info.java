/**
 * Facts one by one: the sheet of any thing, the survey, what is added and taken out. No form is made for one kind of thing:
 * all follow from the field table.
 */
@NullMarked
package tideover.web.facts;

import org.jspecify.annotations.NullMarked;
