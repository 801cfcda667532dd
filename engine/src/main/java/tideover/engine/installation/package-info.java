/**
 * The installation as one netlist, and what follows from where things are connected.
 *
 * <p>{@link tideover.engine.installation.Installation} is resolved from a site: terminals as nodes, conductors, contacts
 * and links as edges. {@link tideover.engine.installation.View} shows it in one operating state with its contacts in
 * position; what feeds a circuit, which RCDs lie on a path, which side a neutral is on and how many connections to earth
 * a live neutral has are traversals of that view. The checks of this package need no impedances: separation and PEN, the
 * neutral–earth link, neutrals, measuring, isolation, by-pass, notices and feedback. Rules after IEC 60364-4-41, -4-43,
 * -5-53, -5-54, -5-55 (551) and -8-82 as the rule book cites them.
 */
@NullMarked
package tideover.engine.installation;

import org.jspecify.annotations.NullMarked;
