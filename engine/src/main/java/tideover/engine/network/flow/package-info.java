/**
 * Alternating currents in a network of single conductors: lines, neutral and earth each for itself.
 *
 * <p>{@link tideover.engine.network.flow.FourWireNetwork} knows points, impedances between them, sources and loads, and
 * nothing of houses. Steady state at one frequency, r.m.s. phasors; holds for every arrangement of conductors, links
 * and earths, also where a neutral is interrupted or nothing is earthed.
 *
 * <p>Nodal equations by Kirchhoff's laws. Points joined without impedance are one; the rest is eliminated from the
 * leaves to the root, which a radial house lets happen without new entries but the small block of one place. What closes
 * a loop keeps its current as an unknown of its own and is eliminated last: the low-rank correction. Loads that are no
 * impedances are currents corrected until they agree.
 */
@NullMarked
package tideover.engine.network.flow;

import org.jspecify.annotations.NullMarked;
