package tideover.files.yaml;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What became of a file.
 *
 * @param root     the tree; nothing where the text could not be read to its end
 * @param problems what is wrong; may be there beside a tree (a key twice)
 */
public record YamlResult(@Nullable Node root, List<YamlProblem> problems) {
    public YamlResult {
        problems = List.copyOf(problems);
    }
}
