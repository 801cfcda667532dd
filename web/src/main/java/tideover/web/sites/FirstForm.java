package tideover.web.sites;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Origin;
import tideover.engine.site.SupplyLines;
import tideover.files.FieldTable;
import tideover.files.cells.Typing;
import tideover.files.first.FirstAnswers;
import tideover.files.first.FirstAnswers.SourceIs;
import tideover.files.first.FirstNumbers;
import tideover.files.first.FirstNumbers.Asked;
import tideover.papers.Wording;

/**
 * The answers as they were sent, and what they mean.
 *
 * @param texts   single answers by field
 * @param there   ids of the loads ticked as being there
 * @param staysOn ids of the loads ticked as having to stay on
 */
record FirstForm(Map<String, String> texts, List<String> there, List<String> staysOn) {
    private static final List<String> FIELDS = List.of(
            "designation",
            "country",
            "origin",
            "earthing",
            "lines",
            "mainFuse",
            "pv",
            "battery",
            "inverter",
            "source",
            "forms");

    FirstForm {
        texts = Map.copyOf(texts);
        there = List.copyOf(there);
        staysOn = List.copyOf(staysOn);
    }

    static FirstForm of(HttpServletRequest request) {
        Map<String, String> texts = new HashMap<>();
        for (String field : FIELDS) {
            String text = request.getParameter(field);
            texts.put(field, text == null ? "" : text.strip());
        }
        return new FirstForm(texts, several(request, "there"), several(request, "staysOn"));
    }

    private static List<String> several(HttpServletRequest request, String name) {
        String[] values = request.getParameterValues(name);
        return values == null ? List.of() : Arrays.asList(values);
    }

    private String text(String field) {
        return texts.getOrDefault(field, "");
    }

    /** What the answers mean; what means nothing is put among the problems, by field. */
    FirstAnswers read(FieldTable fields, Wording words, Map<String, String> problems) {
        if (text("designation").isEmpty()) problems.put("designation", words.text("first.needed.designation"));
        if (text("country").isEmpty()) problems.put("country", words.text("first.needed.country"));
        FirstNumbers numbers = new FirstNumbers(fields, Typing.of(fields, words.locale(), words::word));
        Reader reader = new Reader(numbers, words, problems);
        return new FirstAnswers(
                text("designation"),
                text("country"),
                word(Origin.class, "origin", Origin.ASSUMED),
                find(EarthingSystem.class, "earthing"),
                find(SupplyLines.class, "lines"),
                reader.number("mainFuse", Asked.MAIN_FUSE, text("mainFuse")),
                there,
                staysOn,
                reader.number("pv", Asked.PV, text("pv")),
                reader.number("battery", Asked.BATTERY, text("battery")),
                reader.number("inverter", Asked.INVERTER, text("inverter")),
                word(SourceIs.class, "source", SourceIs.TO_BE_PLANNED),
                word(SupplyLines.class, "forms", SupplyLines.THREE));
    }

    private <E extends Enum<E>> E word(Class<E> type, String field, E otherwise) {
        E found = find(type, field);
        return found == null ? otherwise : found;
    }

    private <E extends Enum<E>> @Nullable E find(Class<E> type, String field) {
        for (E constant : type.getEnumConstants()) if (constant.name().equals(text(field))) return constant;
        return null;
    }

    /** Reads numbers as people type them. */
    private record Reader(FirstNumbers numbers, Wording words, Map<String, String> problems) {

        @Nullable
        Double number(String name, Asked asked, String typed) {
            return numbers.read(asked, typed, why -> problems.put(name, words.of(why)));
        }
    }

    /** The same with a further problem told by the file reader. */
    static Map<String, String> inOrder(Map<String, String> problems) {
        Map<String, String> sorted = new LinkedHashMap<>();
        for (String field : FIELDS) if (problems.containsKey(field)) sorted.put(field, problems.get(field));
        problems.forEach(sorted::putIfAbsent);
        return sorted;
    }
}
