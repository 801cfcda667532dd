package tideover.web.work;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Site;
import tideover.files.InputProblem;
import tideover.files.rules.RuleBookResult;
import tideover.files.rules.RuleBookResult.Readable;
import tideover.files.rules.RuleBookResult.Refused;
import tideover.files.rules.RuleBooks;

/**
 * Rule books by country: that of the country, and over it those of the user's own that fit it; one written over another
 * country's book holds there only. Safe to share between threads.
 */
public final class OwnRules {
    private final List<Path> own;
    private final Map<String, RuleBook> known = new ConcurrentHashMap<>();

    /** @param own files of books, lowest first */
    public OwnRules(List<Path> own) {
        this.own = List.copyOf(own);
    }

    /** What keeps books from being laid over any country's; empty where each fits one at least. */
    public List<InputProblem> problems() {
        Set<InputProblem> problems = new LinkedHashSet<>();
        for (Path file : own) {
            List<InputProblem> inTheWay = new ArrayList<>();
            boolean fits = false;
            for (String book : RuleBooks.NAMES) {
                RuleBookResult result = RuleBooks.read(book, List.of(file));
                fits |= result instanceof Readable;
                if (result instanceof Refused refused && inTheWay.isEmpty()) inTheWay.addAll(refused.problems());
            }
            if (!fits) problems.addAll(inTheWay);
        }
        return List.copyOf(problems);
    }

    /** What holds for a site. */
    RuleBook of(Site site) {
        String country = site.house().place().country();
        return known.computeIfAbsent(country == null ? "" : country, this::read);
    }

    private RuleBook read(String country) {
        List<Path> fitting = own.stream()
                .filter(file -> RuleBooks.read(country, List.of(file)) instanceof Readable)
                .toList();
        if (RuleBooks.read(country, fitting) instanceof Readable readable) return readable.rules();
        throw new IllegalStateException("the rule book of '%s' cannot be read".formatted(country));
    }
}
