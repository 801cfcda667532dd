/**
 * The command line: parses, asks the rooms below, prints, exits. Results go to standard output, problems to standard
 * error; streams and the day are handed in. The status is 0 if every binding finding is met or not applicable, 1 if not,
 * 2 if input was refused, 3 if the fault is ours.
 */
@NullMarked
package tideover.command;

import org.jspecify.annotations.NullMarked;
