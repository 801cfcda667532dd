package tideover.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import tideover.engine.rules.Limit;
import tideover.engine.rules.RuleBook;
import tideover.engine.rules.Topic;
import tideover.files.rules.RuleBooks;
import tideover.papers.LimitText;
import tideover.papers.Wording;

/** Lists a rule book: each limit with clause, source and how far it was compared. */
@Command(name = "rules", resourceBundle = "tideover.command.help", mixinStandardHelpOptions = true)
final class RulesCommand implements Callable<Integer> {

    private final Desk desk;

    @Parameters(paramLabel = "COUNTRY", arity = "0..1")
    private @Nullable String country;

    @Option(names = "--rules", paramLabel = "FILE")
    private List<Path> own = new ArrayList<>();

    RulesCommand(Desk desk) {
        this.desk = desk;
    }

    @Override
    public Integer call() {
        if (country == null) {
            for (String book : RuleBooks.NAMES) topics(desk.rules(book, List.of()));
        } else {
            String name = RuleBooks.bookOf(country.toUpperCase(Locale.ROOT));
            if (!RuleBooks.NAMES.contains(name))
                throw new Refusal(List.of(desk.sentence("rules.unknown", country, String.join(", ", RuleBooks.NAMES))));
            RuleBook book = desk.rules(name, own);
            topics(book);
            for (Limit limit : book.limits()) limit(limit);
        }
        return Status.DONE;
    }

    /** How the book stands to each topic, one line for each stance. */
    private void topics(RuleBook book) {
        Wording wording = desk.wording();
        desk.out().println(desk.sentence("rules.book", book.country(), String.join(", ", book.layers())));
        for (Topic topic : Topic.values())
            desk.out().println(desk.sentence("rules.topic", wording.word(topic), wording.word(book.stance(topic))));
        desk.out().println();
    }

    private void limit(Limit limit) {
        desk.out()
                .println(desk.sentence(
                        "rules.limit",
                        limit.id(),
                        LimitText.value(limit),
                        desk.wording().word(limit.force())));
        desk.out().println(desk.sentence("rules.source", desk.wording().of(limit.source()), limit.book()));
        if (limit.note() != null) desk.out().println(desk.sentence("rules.note", limit.note()));
    }
}
