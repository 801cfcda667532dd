package tideover.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version of the program, written into it by the build. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"tideover " + text()};
    }

    /** Such as {@code 0.1.0}. */
    static String text() {
        try (InputStream stream = Version.class.getResourceAsStream("version.properties")) {
            if (stream == null) throw new IllegalStateException("version.properties is missing from the program");
            Properties properties = new Properties();
            properties.load(stream);
            return properties.getProperty("version");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
