package tideover.files.cells;

/** Text that means nothing where it stands; becomes a {@link Typed.NotUnderstood} where the field is known. */
final class Misread extends Exception {

    private static final long serialVersionUID = 1;

    private final CellProblem problem;
    private final transient String[] arguments;

    /** @param arguments those behind label and typed text */
    Misread(CellProblem problem, String... arguments) {
        super(problem.key(), null, false, false);
        this.problem = problem;
        this.arguments = arguments;
    }

    CellProblem problem() {
        return problem;
    }

    String[] arguments() {
        return arguments.clone();
    }
}
