package tideover.web.trial;

import java.io.IOException;

/** The workbench was asked and did not answer: whoever has not killed it takes this for a failure. */
public final class NoAnswer extends AssertionError {
    private static final long serialVersionUID = 1;

    NoAnswer(IOException cause) {
        super("no answer", cause);
    }
}
