package tideover.web.sites;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import tideover.files.InputProblem;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.site.ImportResult;
import tideover.store.site.VariantId;
import tideover.web.edit.Editing;
import tideover.web.sites.SitesList.FileProblem;

/** Takes site files in, whole or not at all. */
@Component
final class SiteImport {
    /** As much of a line as is read at a glance. */
    private static final int SHOWN = 120;

    private final Store store;
    private final Editing editing;

    SiteImport(Store store, Editing editing) {
        this.store = store;
        this.editing = editing;
    }

    /**
     * What came of a file.
     *
     * @param variant  of the site it became; nothing where it was refused
     * @param problems all that is wrong with it
     */
    record Taken(@Nullable VariantId variant, List<FileProblem> problems) {
        Taken {
            problems = List.copyOf(problems);
        }
    }

    Taken take(String fileName, byte[] bytes, Wording words) {
        String name = fileName.isBlank() ? words.text("sites.file") : fileName;
        ImportResult result = store.sites().importFile(name, bytes, words.text("sites.firstVariant"), editing.entry());
        if (result instanceof ImportResult.Imported imported)
            return new Taken(imported.head().revision().id().variant(), List.of());
        List<String> lines = new String(bytes, StandardCharsets.UTF_8).lines().toList();
        List<FileProblem> problems = new ArrayList<>();
        for (InputProblem problem : ((ImportResult.Refused) result).problems())
            problems.add(problem(problem, lines, words));
        return new Taken(null, problems);
    }

    private static FileProblem problem(InputProblem problem, List<String> lines, Wording words) {
        int line = problem.line();
        String where = line == 0
                ? problem.file()
                : words.text("sites.where", problem.file(), Integer.toString(line), Integer.toString(problem.column()));
        String text = line > 0 && line <= lines.size() ? lines.get(line - 1).strip() : "";
        return new FileProblem(
                where, words.of(problem.phrase()), text.length() > SHOWN ? text.substring(0, SHOWN) + " …" : text);
    }
}
