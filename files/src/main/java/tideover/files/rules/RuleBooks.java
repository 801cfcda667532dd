package tideover.files.rules;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.RuleBook;
import tideover.files.rules.Book.Rank;
import tideover.files.yaml.Spot;

/** The rule books that come with the program, alone or with an operator's or a user's over them. */
public final class RuleBooks {

    /** Names of the books that come with the program, the lowest first. */
    public static final List<String> NAMES = List.of("IEC", "DE", "UK", "AU", "AT");

    private static final String LOWEST = "IEC";

    private RuleBooks() {}

    /**
     * The rule book of a country.
     *
     * @param country two letters (ISO 3166-1), or the name of a book
     * @return for a country without a book one that covers nothing, so that every finding stays open
     */
    public static RuleBook load(String country) {
        return layers(lowest(), country).toRuleBook();
    }

    /**
     * The rule book of a country with others over it, such as an operator's conditions and the user's own.
     *
     * @param country two letters (ISO 3166-1), or the name of a book
     * @param over    files of the others, lowest first
     */
    public static RuleBookResult read(String country, List<Path> over) {
        Complaints complaints = new Complaints();
        Book lowest = lowest();
        Layers layers = layers(lowest, country);
        for (Path path : over) {
            String file = path.toString();
            byte[] bytes = bytes(path);
            if (bytes == null) {
                complaints.at(Spot.whole(file), "", RuleProblem.FILE_UNREADABLE, file);
                continue;
            }
            Book book = new BookReader(Rank.OVERLAY, lowest.forms(), complaints).read(file, bytes);
            if (book == null) continue;
            String under = book.over();
            if (under != null && !under.isEmpty() && !layers.has(under))
                complaints.at(Spot.whole(file), "over", RuleProblem.OVER_OTHER, book.name(), under, bookOf(country));
            layers.lay(book);
        }
        return complaints.isEmpty()
                ? new RuleBookResult.Readable(layers.toRuleBook())
                : new RuleBookResult.Refused(complaints.problems());
    }

    /** Name of the book that holds in a country: that of the country itself, but the United Kingdom's is UK. */
    public static String bookOf(String country) {
        return country.equals("GB") ? "UK" : country;
    }

    private static Layers layers(Book lowest, String country) {
        String name = bookOf(country);
        Layers layers = new Layers(lowest, name);
        if (name.equals(LOWEST)) {
            layers.lay(lowest);
        } else if (NAMES.contains(name)) {
            layers.lay(own(name, Rank.COUNTRY, lowest.forms()));
        }
        return layers;
    }

    private static Book lowest() {
        return own(LOWEST, Rank.LOWEST, Map.of());
    }

    /** A book that comes with the program; what is wrong with it is our fault. */
    private static Book own(String name, Rank rank, Map<String, Book.Form> known) {
        String file = name + ".yaml";
        try (InputStream in = RuleBooks.class.getResourceAsStream(file)) {
            if (in == null) throw new IllegalStateException("rule book %s is missing from the program".formatted(file));
            Complaints complaints = new Complaints();
            Book book = new BookReader(rank, known, complaints).read(file, in.readAllBytes());
            if (book == null || !complaints.isEmpty())
                throw new IllegalStateException(
                        "rule book %s of the program: %s".formatted(file, complaints.problems()));
            return book;
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read rule book " + file, e);
        }
    }

    private static byte @Nullable [] bytes(Path path) {
        try {
            return Files.readAllBytes(path);
        } catch (IOException e) {
            return null;
        }
    }
}
