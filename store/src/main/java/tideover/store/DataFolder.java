package tideover.store;

import java.nio.file.Path;
import java.util.Locale;

/** Where the sites are kept if nobody says. */
public final class DataFolder {
    private static final String NAME = "tideover";

    private DataFolder() {}

    /** The folder that the system has for data of a user's programs. */
    public static Path usual() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home", "."));
        String local = System.getenv(system.startsWith("windows") ? "LOCALAPPDATA" : "XDG_DATA_HOME");
        if (local != null && !local.isBlank()) return Path.of(local).resolve(NAME);
        if (system.startsWith("mac"))
            return home.resolve("Library/Application Support").resolve(NAME);
        return home.resolve(".local/share").resolve(NAME);
    }
}
