package tideover.web.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.springframework.stereotype.Component;
import tideover.engine.rules.Unit;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Origin;
import tideover.files.rules.RuleBooks;
import tideover.files.tables.TypicalLoad;
import tideover.files.tables.TypicalLoad.Habit;
import tideover.files.tables.TypicalValues;
import tideover.papers.Wording;
import tideover.web.page.Pages;
import tideover.web.sites.FirstVisit.Choice;
import tideover.web.sites.FirstVisit.LoadRow;
import tideover.web.sites.FirstVisit.Tick;

/** Makes the page with the five questions. */
@Component
final class FirstVisits {
    private static final List<Origin> ORIGINS = List.of(Origin.DECLARED_BY_CUSTOMER, Origin.READ, Origin.ASSUMED);
    private static final Map<String, String> SUGGESTED = Map.of(
            "origin",
            Origin.DECLARED_BY_CUSTOMER.name(),
            "earthing",
            "",
            "lines",
            "",
            "source",
            "TO_BE_PLANNED",
            "forms",
            "THREE");

    private final Pages pages;
    private final TypicalValues typical;

    FirstVisits(Pages pages, TypicalValues typical) {
        this.pages = pages;
        this.typical = typical;
    }

    /** The questions as nobody has answered them yet. */
    FirstVisit empty(HttpServletRequest request) {
        Set<String> there = new HashSet<>();
        Set<String> staysOn = new HashSet<>();
        for (TypicalLoad load : typical.loads()) {
            if (load.usual() == Habit.NO) continue;
            there.add(load.id());
            if (load.staysOn() == Habit.YES) staysOn.add(load.id());
        }
        return page(SUGGESTED, there, staysOn, Map.of(), request);
    }

    /** The same with the answers kept, and what cannot stand so. */
    FirstVisit again(FirstForm form, Map<String, String> problems, HttpServletRequest request) {
        return page(form.texts(), Set.copyOf(form.there()), Set.copyOf(form.staysOn()), problems, request);
    }

    private FirstVisit page(
            Map<String, String> answers,
            Set<String> there,
            Set<String> staysOn,
            Map<String, String> problems,
            HttpServletRequest request) {
        Wording words = pages.words(request);
        List<LoadRow> loads = typical.loads().stream()
                .map(load -> new LoadRow(
                        load.id(),
                        words.text("first.load." + load.id()),
                        words.amount(load.powerW(), Unit.W),
                        tick(there.contains(load.id())),
                        tick(staysOn.contains(load.id()))))
                .toList();
        return new FirstVisit(
                pages.frame(request, "first.title"),
                countries(words.locale()),
                ORIGINS.stream()
                        .map(origin -> new Choice(origin.name(), words.text("first.origin." + origin.name())))
                        .toList(),
                Arrays.stream(EarthingSystem.values())
                        .map(system -> new Choice(
                                system.name(),
                                words.word(system) + " · " + words.text("first.earthing." + system.name())))
                        .toList(),
                loads,
                new HashMap<>(answers),
                new LinkedHashMap<>(problems));
    }

    private static Tick tick(boolean on) {
        return on ? Tick.ON : Tick.OFF;
    }

    /** Those with a rule book first, then all others by name. */
    private static List<Choice> countries(Locale locale) {
        List<Choice> ruled = new ArrayList<>();
        List<Choice> others = new ArrayList<>();
        for (String code : Locale.getISOCountries()) {
            Choice choice = new Choice(code, new Locale("", code).getDisplayCountry(locale));
            (RuleBooks.NAMES.contains(RuleBooks.bookOf(code)) ? ruled : others).add(choice);
        }
        ruled.sort(Comparator.comparing(Choice::words));
        others.sort(Comparator.comparing(Choice::words));
        ruled.addAll(others);
        return ruled;
    }
}
