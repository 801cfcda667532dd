/**
 * Colours of conductors by standard and country, with the codes of IEC 60757. Which colour a conductor has lies in a table;
 * older installations of a country may use colours that mean something else today.
 */
@NullMarked
package tideover.engine.wiring.colour;

import org.jspecify.annotations.NullMarked;
