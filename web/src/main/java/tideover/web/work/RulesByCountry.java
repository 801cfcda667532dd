package tideover.web.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Site;
import tideover.files.InputProblem;
import tideover.files.rules.RuleBookResult.Readable;
import tideover.files.rules.RuleBookResult.Refused;
import tideover.files.rules.RuleBooks;

/**
 * Rule books by country: that of the country, and over it those of the user's own that fit it; one written over another
 * country's book holds there only. What was read holds, whatever becomes of the files. Safe to share between threads.
 */
public final class RulesByCountry {
    private final List<Path> own;
    private final Map<String, RuleBook> known = new ConcurrentHashMap<>();

    /** @param own files of books, lowest first; a later one may be written over an earlier one */
    public RulesByCountry(List<Path> own) {
        this.own = List.copyOf(own);
    }

    /** Reads them all for each book that comes with the program. @return what keeps one from fitting any of these */
    public List<InputProblem> read() {
        Map<Path, List<InputProblem>> fitNowhere = null;
        for (String book : RuleBooks.NAMES) {
            Map<Path, List<InputProblem>> left = new LinkedHashMap<>();
            known.put(book, layered(book, left));
            if (fitNowhere == null) fitNowhere = left;
            else fitNowhere.keySet().retainAll(left.keySet());
        }
        return fitNowhere == null
                ? List.of()
                : fitNowhere.values().stream().flatMap(List::stream).toList();
    }

    /** What holds for a site. */
    RuleBook of(Site site) {
        String country = site.house().place().country();
        return known.computeIfAbsent(
                country == null ? "" : RuleBooks.bookOf(country), book -> layered(book, new LinkedHashMap<>()));
    }

    /** @param left gets the files that do not fit, and why */
    private RuleBook layered(String book, Map<Path, List<InputProblem>> left) {
        List<Path> fitting = new ArrayList<>();
        for (Path file : own) {
            fitting.add(file);
            if (RuleBooks.read(book, fitting) instanceof Refused refused) {
                left.put(file, refused.problems());
                fitting.remove(fitting.size() - 1);
            }
        }
        if (RuleBooks.read(book, fitting) instanceof Readable readable) return readable.rules();
        throw new IllegalStateException("the rule book of '%s' cannot be read".formatted(book));
    }
}
