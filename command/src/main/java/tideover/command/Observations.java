package tideover.command;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.BiPredicate;
import tideover.engine.site.Port;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.diagnosis.Observation;
import tideover.engine.wiring.model.Shown;
import tideover.engine.wiring.procedure.PlannedReading;
import tideover.files.text.Nearest;
import tideover.papers.diagnosis.DiagnosisLists;
import tideover.papers.wiring.WiringModel;
import tideover.papers.wiring.WiringWording;

/** Reads what somebody has seen, typed as {@code READING=VALUE}; both may be shortened as long as they fit one thing only. */
final class Observations {

    private static final int MOST_NAMED = 6;

    private final Desk desk;
    private final WiringModel model;
    private final WiringWording words;
    private final List<PlannedReading> readings;
    /** Parts of each reading's id, each with the other names it goes by. */
    private final List<List<Set<String>>> parts = new ArrayList<>();

    Observations(Desk desk, WiringModel model) {
        this.desk = desk;
        this.model = model;
        this.words = model.words();
        this.readings = model.run().procedure().readings();
        for (PlannedReading reading : readings) parts.add(parts(reading));
    }

    /** What was typed, in its order. @throws Refusal with all that is wrong with it */
    List<Observation> of(List<String> typed) {
        List<String> problems = new ArrayList<>();
        Map<PlannedReading, Observation> seen = new HashMap<>();
        List<Observation> all = new ArrayList<>();
        for (String each : typed) {
            try {
                Observation observation = of(each);
                Observation before = seen.put(observation.reading(), observation);
                if (before == null) all.add(observation);
                else if (before.shown() != observation.shown())
                    problems.add(desk.sentence(
                            "diagnosis.twice", observation.reading().id()));
            } catch (Refusal refusal) {
                problems.addAll(refusal.sentences());
            }
        }
        if (!problems.isEmpty()) throw new Refusal(problems);
        return all;
    }

    private Observation of(String typed) {
        int equals = typed.lastIndexOf('=');
        if (equals <= 0 || equals == typed.length() - 1) throw refusal("diagnosis.noValue", typed);
        PlannedReading reading = reading(typed.substring(0, equals));
        return new Observation(reading, shown(reading, typed.substring(equals + 1)));
    }

    private Refusal refusal(String key, String... texts) {
        return new Refusal(List.of(desk.sentence(key, texts)));
    }

    private PlannedReading reading(String typed) {
        for (PlannedReading reading : readings) if (reading.id().equalsIgnoreCase(typed)) return reading;
        List<String> tokens = tokens(typed);
        List<PlannedReading> found = matching(tokens);
        if (found.size() == 1) return found.get(0);
        if (found.size() > 1) throw refusal("diagnosis.several.readings", typed, ids(found));
        List<PlannedReading> near = matching(mended(tokens));
        if (near.isEmpty()) throw refusal("diagnosis.noReading", typed);
        throw refusal("diagnosis.noReading.near", typed, ids(near));
    }

    private String ids(List<PlannedReading> found) {
        List<String> named = new ArrayList<>(
                found.stream().limit(MOST_NAMED).map(PlannedReading::id).toList());
        if (found.size() > MOST_NAMED)
            named.add(desk.sentence("diagnosis.andMore", String.valueOf(found.size() - MOST_NAMED)));
        return String.join(", ", named);
    }

    private static List<String> tokens(String typed) {
        List<String> tokens = new ArrayList<>();
        for (String token : plain(typed).split("[/:]")) if (!token.isEmpty()) tokens.add(token);
        return tokens;
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replace(' ', '-').replace('–', '-');
    }

    private List<Set<String>> parts(PlannedReading reading) {
        List<Set<String>> all = new ArrayList<>();
        ThingId place = reading.reading().place();
        for (String part : tokens(reading.id())) {
            Set<String> names = new LinkedHashSet<>(List.of(part));
            if (part.equals(place.text())) {
                names.add(plain(words.name(place)));
                names.add(plain(words.tag(place)));
                model.house()
                        .wiring()
                        .findPort(place)
                        .map(Port::at)
                        .filter(Objects::nonNull)
                        .ifPresent(device -> names.addAll(List.of(device.text(), plain(words.tag(device)))));
            }
            all.add(names);
        }
        return all;
    }

    /** Whole names first, then beginnings, then parts; readings with nothing lifted before those with a core lifted. */
    private List<PlannedReading> matching(List<String> tokens) {
        if (tokens.isEmpty()) return List.of();
        List<BiPredicate<String, String>> ways = List.of(String::equals, String::startsWith, String::contains);
        for (BiPredicate<String, String> way : ways) {
            List<PlannedReading> found = new ArrayList<>();
            for (PlannedReading reading : readings)
                if (fits(parts.get(reading.index()), tokens, way)) found.add(reading);
            List<PlannedReading> whole =
                    found.stream().filter(reading -> reading.lifted() == null).toList();
            if (!whole.isEmpty()) return whole;
            if (!found.isEmpty()) return found;
        }
        return List.of();
    }

    private static boolean fits(List<Set<String>> parts, List<String> tokens, BiPredicate<String, String> way) {
        int next = 0;
        for (Set<String> names : parts) {
            String token = tokens.get(next);
            if (names.stream().anyMatch(name -> way.test(name, token)) && ++next == tokens.size()) return true;
        }
        return false;
    }

    /** Words nothing is called by, each replaced by the name it is nearest to; left out where there is none. */
    private List<String> mended(List<String> tokens) {
        Set<String> names = new LinkedHashSet<>();
        for (List<Set<String>> each : parts) each.forEach(names::addAll);
        Nearest nearest = new Nearest();
        List<String> mended = new ArrayList<>();
        for (String token : tokens) {
            boolean isKnown = names.stream().anyMatch(name -> name.contains(token));
            String name = isKnown ? token : nearest.of(token, names);
            if (name != null) mended.add(name);
        }
        return mended;
    }

    private Shown shown(PlannedReading reading, String typed) {
        String wanted = bare(typed);
        List<Shown> possible = reading.reading().kind().possible();
        for (Shown value : possible)
            if (bare(value.name()).equals(wanted)
                    || bare(words.shown(reading.reading(), value)).equals(wanted)) return value;
        List<Shown> begun = possible.stream()
                .filter(value -> bare(value.name()).startsWith(wanted)
                        || bare(words.shown(reading.reading(), value)).startsWith(wanted))
                .toList();
        if (begun.size() == 1 && !wanted.isEmpty()) return begun.get(0);
        throw refusal(
                "diagnosis.noShown", typed, reading.id(), String.join(", ", new DiagnosisLists(model).values(reading)));
    }

    private static String bare(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
    }
}
