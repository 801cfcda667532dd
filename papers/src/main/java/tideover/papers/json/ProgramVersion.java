package tideover.papers.json;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The version of the program, written into it by the build. */
public final class ProgramVersion {
    private ProgramVersion() {}

    /** Such as {@code 0.1.0}. */
    public static String text() {
        try (InputStream stream = ProgramVersion.class.getResourceAsStream("version.properties")) {
            if (stream == null) throw new IllegalStateException("version.properties is missing from the program");
            Properties properties = new Properties();
            properties.load(stream);
            return properties.getProperty("version");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
