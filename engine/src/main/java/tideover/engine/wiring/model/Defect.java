package tideover.engine.wiring.model;

import java.util.List;
import tideover.engine.site.BusPort;
import tideover.engine.site.ControlPort;
import tideover.engine.wiring.net.Edit;

/**
 * What a mistake or a failure changes in the model.
 *
 * @param power    edit of lines, neutrals and earth
 * @param control  edit of control and bus cores
 * @param failures devices that do not do what they should
 * @param ports    ports set otherwise than planned
 * @param buses    bus ports set otherwise than planned
 */
public record Defect(Edit power, Edit control, List<Failure> failures, List<ControlPort> ports, List<BusPort> buses) {

    /** Nothing is wrong. */
    public static final Defect NONE = new Defect(Edit.NONE, Edit.NONE, List.of(), List.of(), List.of());

    public Defect {
        failures = List.copyOf(failures);
        ports = List.copyOf(ports);
        buses = List.copyOf(buses);
    }

    public static Defect power(Edit edit) {
        return new Defect(edit, Edit.NONE, List.of(), List.of(), List.of());
    }

    public static Defect control(Edit edit) {
        return new Defect(Edit.NONE, edit, List.of(), List.of(), List.of());
    }

    public static Defect failure(Failure failure) {
        return new Defect(Edit.NONE, Edit.NONE, List.of(failure), List.of(), List.of());
    }

    public static Defect set(ControlPort... ports) {
        return new Defect(Edit.NONE, Edit.NONE, List.of(), List.of(ports), List.of());
    }

    public static Defect set(BusPort port) {
        return new Defect(Edit.NONE, Edit.NONE, List.of(), List.of(), List.of(port));
    }
}
