package tideover.papers.wiring;

import java.util.List;

/** One part of what is told of the wiring of a site. */
public interface WiringPart {

    /** All parts, in the order in which they are told. */
    List<WiringPart> ALL = List.of(
            new PowerPart(), new ControlPart(), new CuttingPart(), new LabelPart(), new PartsPart(), new BuiltPart());

    /** What the next electrician needs; cutting and labels serve the work only. */
    List<WiringPart> OF_HANDOVER = List.of(new PowerPart(), new ControlPart(), new PartsPart(), new BuiltPart());

    /** What it is called on the command line and in file names. */
    String name();

    /** The part as a table. */
    Listing of(WiringData wiring);
}
