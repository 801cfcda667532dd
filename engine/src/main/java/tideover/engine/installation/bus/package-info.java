/**
 * The bus between meter, inverter and what else talks on it: lines of RS-485 found by traversal of their cores, what loads
 * them, how long a round of questions takes, and the checks of all that.
 *
 * <p>Holds in every operating state. Timing and frames: MODBUS over Serial Line V1.02, 2.5.1, and MODBUS Messaging on
 * TCP/IP V1.0b. Load and idle voltage: TIA/EIA-485-A and the divider of bias and end resistors. Limits stand in the rule
 * book.
 */
@NullMarked
package tideover.engine.installation.bus;

import org.jspecify.annotations.NullMarked;
