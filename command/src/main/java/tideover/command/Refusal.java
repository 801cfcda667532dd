package tideover.command;

import java.util.List;

/** Input that cannot be worked with, in sentences for the person. */
public final class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient List<String> sentences;

    public Refusal(List<String> sentences) {
        super(String.join("\n", sentences));
        this.sentences = List.copyOf(sentences);
    }

    List<String> sentences() {
        return sentences;
    }
}
