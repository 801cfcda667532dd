package tideover.engine.rules;

/** Takes down the lines of a calculation while it is made. */
public interface Trace {

    /** Takes nothing down: for searches and edits. */
    Trace NONE = new Trace() {
        @Override
        public boolean isOn() {
            return false;
        }

        @Override
        public void line(String key, PhraseArg... arguments) {}
    };

    /** Whether lines are taken down; lets a busy formula skip making them. */
    boolean isOn();

    /** One line; its wording is in the bundle under {@code key}. */
    void line(String key, PhraseArg... arguments);
}
