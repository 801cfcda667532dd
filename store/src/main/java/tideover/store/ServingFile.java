package tideover.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Where the workbench that owns a data folder can be reached, and the key that lets in: a private file in the folder, there
 * as long as it runs.
 *
 * @param port of the loopback address
 * @param key  whoever can read it may do what the owner may
 */
public record ServingFile(int port, String key) {
    private static final String NAME = "serving";

    /** What a folder says; nothing where no workbench runs, or none that ended well. */
    public static Optional<ServingFile> find(Path folder) {
        try {
            List<String> lines = Files.readAllLines(folder.resolve(NAME), StandardCharsets.UTF_8);
            return lines.size() == 2
                    ? Optional.of(new ServingFile(Integer.parseInt(lines.get(0)), lines.get(1)))
                    : Optional.empty();
        } catch (IOException | NumberFormatException e) {
            return Optional.empty();
        }
    }

    /** Writes it, for its owner's eyes only. */
    public void write(Path folder) {
        Path file = folder.resolve(NAME);
        try {
            Files.deleteIfExists(file);
            PrivateFiles.create(file);
            Files.writeString(file, port + "\n" + key + "\n", StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw PrivateFiles.refusal(folder, e);
        }
    }

    /** Takes it away. */
    public static void remove(Path folder) {
        try {
            Files.deleteIfExists(folder.resolve(NAME));
        } catch (IOException e) {
            throw new UncheckedIOException("cannot take away " + folder.resolve(NAME), e);
        }
    }

    @Override
    public String toString() {
        // The key must not reach a log.
        return "ServingFile[port=" + port + "]";
    }
}
