package tideover.store.database;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.files.text.MessageKey;

/** The store cannot do what it was asked for, and why; whatever it had begun is undone. */
public final class StoreRefusal extends RuntimeException {
    private static final long serialVersionUID = 1;

    /** Why; each has a sentence in the bundle under {@link #key()}, and the comment tells what is filled into it. */
    public enum Reason {
        /** Folder. */
        IN_USE(1),
        /** Folder, reason of the operating system. */
        FOLDER_NOT_MADE(2),
        /** Folder. */
        FOLDER_READ_ONLY(1),
        /** Folder: it was there when the store was opened. */
        FOLDER_GONE(1),
        /** File: it was there when the store was opened, or another one is there by now. */
        STORE_GONE(1),
        /** Folder for temporary files: the program of the database is unpacked there. */
        NOT_UNPACKED(1),
        /** Folder. */
        DISK_FULL(1),
        /** Folder, reason of the operating system. */
        WRITE_FAILED(2),
        /** File. */
        FILE_MISSING(1),
        /** File. */
        FILE_EXISTS(1),
        /** File. */
        NOT_A_STORE(1),
        /** File, what is wrong with it. */
        DAMAGED(2),
        /** File, its version, the newest version known. */
        STORE_NEWER(3),
        /** Digest of what is kept. */
        SITE_DAMAGED(1),
        /** File name. */
        ATTACHMENT_DAMAGED(1),
        /** Its format, the newest format known. */
        SITE_NEWER(2);

        private final int arity;

        Reason(int arity) {
            this.arity = arity;
        }

        /** Number of places its sentence fills. */
        public int arity() {
            return arity;
        }

        /** Where its wording stands in the bundle. */
        public String key() {
            return MessageKey.of("store.refused.", this);
        }
    }

    private final Reason reason;
    private final List<String> arguments;

    private StoreRefusal(@Nullable Throwable cause, Reason reason, List<String> arguments) {
        super(reason + " " + arguments, cause);
        if (arguments.size() != reason.arity)
            throw new IllegalArgumentException(
                    "%s takes %d arguments, not %d".formatted(reason, reason.arity, arguments.size()));
        this.reason = reason;
        this.arguments = arguments;
    }

    /** A refusal of which nothing but the reason is known. */
    public static StoreRefusal of(Reason reason, Object... arguments) {
        return because(null, reason, arguments);
    }

    /** A refusal with what was behind it. */
    public static StoreRefusal because(@Nullable Throwable cause, Reason reason, Object... arguments) {
        List<String> texts = new ArrayList<>();
        for (Object argument : arguments) texts.add(argument.toString());
        return new StoreRefusal(cause, reason, List.copyOf(texts));
    }

    public Reason reason() {
        return reason;
    }

    /** The same with another name for what it is about. */
    public StoreRefusal naming(Object instead, Object of) {
        List<String> renamed = arguments.stream()
                .map(argument -> argument.equals(of.toString()) ? instead.toString() : argument)
                .toList();
        return new StoreRefusal(this, reason, renamed);
    }

    /** The sentence for whoever asked. */
    public Phrase phrase() {
        return new Phrase(
                reason.key(), arguments.stream().map(PhraseArg::verbatim).toList());
    }
}
