/**
 * The first picture of a house: what a customer can say at the kitchen table, filled up with what is common. Whatever was
 * not said is marked as assumed; what nobody may assume is left out and asked for.
 */
@NullMarked
package tideover.files.first;

import org.jspecify.annotations.NullMarked;
