package tideover.papers.wiring;

import java.util.List;

/** One part of what is told of the wiring of a site. */
public interface WiringPart {

    /** All parts, in the order in which they are told. */
    List<WiringPart> ALL = List.of(
            new PowerPart(),
            new ControlPart(),
            new CuttingPart(),
            new LabelPart(),
            new PartsPart(),
            new BuiltPart(),
            new StatesPart(),
            new ChangeoverPart(),
            new StepsPart(),
            new CoveragePart(),
            new MistakesPart());

    /** What is told unless something else is asked for: all but the long lists of steps and of mistakes. */
    List<WiringPart> USUAL = List.of(
            new PowerPart(),
            new ControlPart(),
            new CuttingPart(),
            new LabelPart(),
            new PartsPart(),
            new BuiltPart(),
            new StatesPart(),
            new ChangeoverPart(),
            new CoveragePart());

    /** What the next electrician needs; cutting and labels serve the work only, steps the commissioning. */
    List<WiringPart> OF_HANDOVER =
            List.of(new PowerPart(), new ControlPart(), new PartsPart(), new BuiltPart(), new StatesPart());

    /** What it is called on the command line and in file names. */
    String name();

    /** The part as one table or several. */
    List<Listing> of(WiringData wiring);
}
