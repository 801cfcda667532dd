package tideover.reference.house;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The files of the project as they lie in its folders. */
final class ProjectFiles {

    /** Tests run in the folder of their module. */
    static final Path ROOT = Path.of("").toAbsolutePath().getParent();

    private static final Set<String> NOT_OURS = Set.of("target", ".git", ".idea", ".vscode");

    private ProjectFiles() {}

    /** All files below a folder that end so, in the order of their names. */
    static List<Path> endingIn(Path folder, String... ends) {
        try (Stream<Path> paths = Files.walk(folder)) {
            return paths.filter(Files::isRegularFile)
                    .filter(path -> isOurs(ROOT.relativize(path)))
                    .filter(path -> Stream.of(ends).anyMatch(path.toString()::endsWith))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isOurs(Path relative) {
        for (Path part : relative) if (NOT_OURS.contains(part.toString())) return false;
        return true;
    }
}
