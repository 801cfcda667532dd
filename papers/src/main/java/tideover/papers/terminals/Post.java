package tideover.papers.terminals;

import java.util.List;

/**
 * One terminal.
 *
 * @param name  as its maker prints it
 * @param note  tightening torque and length to strip; empty where nobody has stated them
 * @param leads conductors at it
 */
record Post(String name, String note, List<Lead> leads) {
    Post {
        leads = List.copyOf(leads);
    }
}
