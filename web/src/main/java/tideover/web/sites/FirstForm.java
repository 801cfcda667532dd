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
import tideover.files.Field;
import tideover.files.FieldTable;
import tideover.files.cells.Typed;
import tideover.files.cells.Typing;
import tideover.files.first.FirstAnswers;
import tideover.files.first.FirstAnswers.SourceIs;
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
        Typing typing = Typing.of(fields, words.locale(), words::word);
        Reader reader = new Reader(fields, typing, words, problems);
        return new FirstAnswers(
                text("designation"),
                text("country"),
                word(Origin.class, "origin", Origin.ASSUMED),
                find(EarthingSystem.class, "earthing"),
                find(SupplyLines.class, "lines"),
                reader.number("mainFuse", "supply.mainFuse.ratedCurrentA", "", text("mainFuse")),
                there,
                staysOn,
                reader.number("pv", "pvArrays.peakPowerW", " kW", text("pv")),
                reader.number("battery", "batteries.usableEnergyWh", " kWh", text("battery")),
                reader.number("inverter", "inverters.ratedPowerVa", " kVA", text("inverter")),
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
    private record Reader(FieldTable fields, Typing typing, Wording words, Map<String, String> problems) {

        /** @param unit of a bare number, as the label says; empty for that of the field */
        @Nullable
        Double number(String name, String path, String unit, String typed) {
            boolean bare = !typed.isEmpty() && Character.isDigit(typed.charAt(typed.length() - 1));
            Field field = fields.find(path).orElseThrow();
            Typed meant = typing.read(field, bare ? typed + unit : typed);
            if (meant instanceof Typed.NotUnderstood not) {
                problems.put(name, words.of(not.problem().phrase()));
                return null;
            }
            if (!(meant instanceof Typed.Value value) || value.text() == null) return null;
            double number = Double.parseDouble(value.text());
            Double min = field.min();
            Double max = field.max();
            // Nothing at all is an answer too: there is none.
            if (number == 0) return null;
            if (min != null && number < min || max != null && number > max)
                problems.put(name, words.text("first.range", field.words(), typed));
            return number;
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
