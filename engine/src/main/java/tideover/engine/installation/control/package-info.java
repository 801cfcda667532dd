/**
 * Control wiring as part of the netlist: terminals of signals and bus as nodes, cores as edges. Everything about which
 * port is joined to which is a traversal of it; the checks here judge what is wired against how the devices are set.
 *
 * <p>Holds in every mode. Cores are copper; a core is joined or it is not, except where voltage drop is asked for.
 */
@NullMarked
package tideover.engine.installation.control;

import org.jspecify.annotations.NullMarked;
