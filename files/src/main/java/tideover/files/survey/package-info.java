/**
 * What is to be asked and looked at in a house: facts that set the price first, then what open findings wait for. The order
 * comes from a table of our own choice. No formulas.
 */
@NullMarked
package tideover.files.survey;

import org.jspecify.annotations.NullMarked;
