/**
 * The checks of residual current devices, each in every operating state it concerns: place, additional protection, type,
 * blinding by smooth d.c., direction of feed, rated current, selectivity, touch voltage in TT, and the cable of an
 * inverter. Which devices see a fault comes from the fault study, where they are from the netlist. Rules after
 * IEC 60364-4-41 (411, 415), IEC 60364-5-53 (531, 536) and the product standards IEC 61008-1, 61009-1 and 62423, as the
 * rule book cites them.
 */
@NullMarked
package tideover.engine.protection.residual;

import org.jspecify.annotations.NullMarked;
