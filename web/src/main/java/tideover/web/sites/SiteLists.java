package tideover.web.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Component;
import tideover.engine.rules.PhraseArg;
import tideover.papers.Wording;
import tideover.store.Store;
import tideover.store.site.SiteRow;
import tideover.store.site.SiteSearch;
import tideover.store.site.VariantRow;
import tideover.web.page.Pages;
import tideover.web.sites.SitesList.Entry;
import tideover.web.sites.SitesList.FileProblem;
import tideover.web.sites.SitesList.Row;
import tideover.web.sites.SitesList.Shelf;
import tideover.web.work.Frames;

/** Makes lists of sites. */
@Component
final class SiteLists {
    /** As many as are looked through; whoever has more searches. */
    private static final int MOST = 60;

    private final Store store;
    private final Pages pages;
    private final Verdicts verdicts;

    SiteLists(Store store, Pages pages, Verdicts verdicts) {
        this.store = store;
        this.pages = pages;
        this.verdicts = verdicts;
    }

    /** Whether nothing is kept at all, on no shelf. */
    boolean isEmpty() {
        return store.sites().list(new SiteSearch("", SiteSearch.Shelf.BOTH, 1)).isEmpty();
    }

    /** The sites that match. */
    SitesList of(String query, Shelf shelf, List<FileProblem> problems, HttpServletRequest request) {
        Wording words = pages.words(request);
        List<SiteRow> found =
                store.sites().list(new SiteSearch(query, SiteSearch.Shelf.valueOf(shelf.name()), MOST + 1));
        List<Row> rows =
                found.stream().limit(MOST).map(site -> row(site, words)).toList();
        String counted = words.text(
                found.size() > MOST ? "sites.first" : query.isBlank() ? "sites.all" : "sites.found",
                PhraseArg.count(rows.size()));
        return new SitesList(pages.frame(request, "sites.title"), query, shelf, rows, counted, problems);
    }

    private Row row(SiteRow site, Wording words) {
        VariantRow latest = site.latest();
        List<Entry> entries = new ArrayList<>();
        for (VariantRow variant : site.variants()) entries.add(entry(variant, words));
        String name = latest.designation().isEmpty() ? words.text("frame.unnamed") : latest.designation();
        return new Row(name, latest.country(), "/sites/" + latest.id(), entries);
    }

    private Entry entry(VariantRow variant, Wording words) {
        Verdicts.Short verdict = verdicts.of(variant);
        List<String> counts = new ArrayList<>();
        add("sites.notMet", verdict.notMet(), counts, words);
        add("sites.notCertain", verdict.notCertain(), counts, words);
        add("sites.open", verdict.open(), counts, words);
        add("sites.advice", verdict.advice(), counts, words);
        return new Entry(
                "/sites/" + variant.id(),
                variant.name(),
                verdict.outcome().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                words.outcome(verdict.outcome()),
                String.join(", ", counts),
                Frames.when(variant.changedAt(), words.locale()));
    }

    private static void add(String key, int count, List<String> counts, Wording words) {
        if (count > 0) counts.add(words.text(key, PhraseArg.count(count)));
    }
}
