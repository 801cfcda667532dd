/**
 * Nets of terminals: what is joined to what with all contacts in one position, and which potentials reach each terminal.
 * A wiring mistake is an {@link tideover.engine.wiring.net.Edit} of the list of joints.
 *
 * <p>{@link tideover.engine.wiring.net.SwitchingNet} holds extra-low voltage control wiring, {@link
 * tideover.engine.wiring.net.PowerNet} lines, neutrals and earth. Both are discrete: a joint conducts or it does not.
 * The method is that of simulating single faults in switching nets (wires as joints, union of joined terminals, potentials
 * by rails and drivers); see Kautz, IEEE Trans. Computers C-23(4), 1974, for opens, shorts and exchanged wires.
 */
@NullMarked
package tideover.engine.wiring.net;

import org.jspecify.annotations.NullMarked;
