/**
 * The house as a network of lines, neutral and earth in one operating state, and what flows in it.
 *
 * <p>{@link tideover.engine.network.house.HouseNetwork} stamps every closed edge of the netlist as a branch: cables by
 * their series impedance at operating temperature, links, contacts and busbars without any, electrodes by their resistance
 * to remote earth. The grid is a voltage behind an impedance with an earth of its own, an island source a voltage at its
 * terminals, everything else draws or feeds power. Holds in all operating states. The reference impedance of a
 * network nobody has measured is that of IEC 60725; unbalance is that of EN 50160 and IEC 61000-4-30 (negative over positive sequence).
 */
@NullMarked
package tideover.engine.network.house;

import org.jspecify.annotations.NullMarked;
