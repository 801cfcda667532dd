package tideover.store;

import java.io.IOException;
import java.nio.file.Path;

/** The log of the workbench beside the sites. */
public final class LogFile {
    private static final String NAME = "tideover.log";

    private LogFile() {}

    /** Where it is in a data folder; made where it is missing, for its owner's eyes only. */
    public static Path in(Path folder) {
        Path file = folder.resolve(NAME);
        try {
            PrivateFiles.create(file);
            return file;
        } catch (IOException e) {
            throw PrivateFiles.refusal(folder, e);
        }
    }
}
