package tideover.files.cells;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Curve;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.RcdDelay;
import tideover.engine.site.RcdType;
import tideover.files.Field;
import tideover.files.FieldTable;
import tideover.files.text.Numbers;

/** Devices and cables in the shorthand of the trade: B16, gG 35, 40 A 30 mA F, 5×4 12 m. What is not known is a question mark. */
final class Shorthand {

    private static final String NUMBER = "([0-9.,]+|\\?)";
    private static final Pattern BREAKER =
            Pattern.compile("(?:(.*?)\\s+)?([BCDKZ?])\\s*-?\\s*" + NUMBER + "\\s*A?", Pattern.CASE_INSENSITIVE);
    private static final Pattern FUSE =
            Pattern.compile("(?:gG|gL|fuse)\\s*" + NUMBER + "\\s*A?", Pattern.CASE_INSENSITIVE);
    private static final Pattern FUSE_BEHIND =
            Pattern.compile(NUMBER + "\\s*A?\\s*(?:gG|gL|fuse)", Pattern.CASE_INSENSITIVE);
    private static final Pattern CURRENT = Pattern.compile(NUMBER + "\\s*A?", Pattern.CASE_INSENSITIVE);
    private static final Pattern SLASH =
            Pattern.compile(NUMBER + "\\s*A?\\s*/\\s*" + NUMBER + "\\s*(mA|A)?(?:\\s+(.*))?", Pattern.CASE_INSENSITIVE);
    private static final Pattern RESIDUAL =
            Pattern.compile("(?:" + NUMBER + "\\s*A\\s+)?" + NUMBER + "\\s*mA(?:\\s+(.*))?", Pattern.CASE_INSENSITIVE);
    private static final Pattern CABLE = Pattern.compile(
            "(?:([0-9]+)\\s*[x×*]\\s*)?" + NUMBER + "\\s*(?:mm²|mm2|qmm)?(?:\\s+([0-9.,]+\\s*(?:mm|cm|m|km)))?",
            Pattern.CASE_INSENSITIVE);

    private final FieldTable table;
    private final Quantities quantities;
    private final Words words;

    Shorthand(FieldTable table, Quantities quantities, Words words) {
        this.table = table;
        this.quantities = quantities;
        this.words = words;
    }

    /** Such as B16, "C 10 A", "gG 35" or "16 A". */
    Map<String, @Nullable String> overcurrentDevice(Field group, String typed) throws Misread {
        Map<String, @Nullable String> facts = new LinkedHashMap<>();
        Matcher fuse = FUSE.matcher(typed);
        if (!fuse.matches()) fuse = FUSE_BEHIND.matcher(typed);
        if (fuse.matches()) {
            facts.put("kind", OvercurrentKind.FUSE.name());
            // A breaker's own facts say nothing of a fuse.
            for (String breakers : List.of("curve", "energyLimitingClass", "largestBackupFuseA"))
                facts.put(breakers, null);
            facts.put("conditionalShortCircuitCurrentA", null);
            put(facts, group, "ratedCurrentA", fuse.group(1));
            return facts;
        }
        Matcher current = CURRENT.matcher(typed);
        if (current.matches()) {
            put(facts, group, "ratedCurrentA", current.group(1));
            return facts;
        }
        Matcher breaker = BREAKER.matcher(typed);
        if (!breaker.matches()) throw new Misread(CellProblem.OVERCURRENT_DEVICE);
        String kind = breaker.group(1);
        facts.put("kind", kind == null ? OvercurrentKind.MCB.name() : breakerKind(group, kind));
        String curve = breaker.group(2).toUpperCase(Locale.ROOT);
        if (!curve.equals("?")) facts.put("curve", Curve.valueOf(curve).name());
        put(facts, group, "ratedCurrentA", breaker.group(3));
        return facts;
    }

    private String breakerKind(Field group, String typed) throws Misread {
        try {
            String kind = words.read(inside(group, "kind"), OvercurrentKind.class, typed);
            if (!kind.equals(OvercurrentKind.FUSE.name())) return kind;
        } catch (Misread e) {
            // Said for the whole cell.
        }
        throw new Misread(CellProblem.OVERCURRENT_DEVICE);
    }

    /** Such as "30 mA A", "40 A 30 mA F", "63/0.3 S B" or "RCD type A 30 mA". */
    Map<String, @Nullable String> residualDevice(Field group, String typed) throws Misread {
        Map<String, @Nullable String> facts = new LinkedHashMap<>();
        String text =
                typed.replaceAll("(?i)\\b(?:RCD|RCBO|type)\\b", " ").strip().replaceAll(" +", " ");
        String behind;
        Matcher slash = SLASH.matcher(text);
        Matcher residual = RESIDUAL.matcher(text);
        if (slash.matches()) {
            put(facts, group, "ratedCurrentA", slash.group(1));
            String unit = slash.group(3) == null ? "" : " " + slash.group(3);
            put(facts, group, "ratedResidualCurrentA", slash.group(2), unit);
            behind = slash.group(4);
        } else if (residual.matches()) {
            if (residual.group(1) != null) put(facts, group, "ratedCurrentA", residual.group(1));
            put(facts, group, "ratedResidualCurrentA", residual.group(2), " mA");
            behind = residual.group(3);
        } else {
            Matcher typeFirst = Pattern.compile("((?:AC|[AFB]|S)(?: S)?) (.*[0-9?].*)", Pattern.CASE_INSENSITIVE)
                    .matcher(text);
            if (!typeFirst.matches()) throw new Misread(CellProblem.RESIDUAL_DEVICE);
            return residualDevice(group, typeFirst.group(2) + " " + typeFirst.group(1));
        }
        if (behind != null && !behind.isBlank()) marks(facts, behind.strip());
        return facts;
    }

    private static void marks(Map<String, @Nullable String> facts, String marks) throws Misread {
        for (String mark : marks.toUpperCase(Locale.ROOT).split(" ")) {
            String fact;
            String word;
            switch (mark) {
                case "S", "SELECTIVE" -> {
                    fact = "delay";
                    word = RcdDelay.SELECTIVE.name();
                }
                case "GENERAL" -> {
                    fact = "delay";
                    word = RcdDelay.GENERAL.name();
                }
                case "AC", "A", "F", "B" -> {
                    fact = "type";
                    word = RcdType.valueOf(mark).name();
                }
                case "?" -> {
                    continue;
                }
                default -> throw new Misread(CellProblem.RESIDUAL_DEVICE);
            }
            if (facts.put(fact, word) != null) throw new Misread(CellProblem.RESIDUAL_DEVICE);
        }
    }

    /**
     * Such as "3×2.5", "5x4 12 m" or "2.5 mm²".
     *
     * @param conductors those of the thing; none where they are not known
     */
    Map<String, @Nullable String> cable(Field group, String typed, List<String> conductors) throws Misread {
        Matcher cable = CABLE.matcher(typed);
        if (!cable.matches()) throw new Misread(CellProblem.CABLE);
        if (cable.group(1) != null) count(cable.group(1), conductors);
        Map<String, @Nullable String> facts = new LinkedHashMap<>();
        put(facts, group, "crossSectionMm2", cable.group(2));
        if (cable.group(3) != null) facts.put("lengthM", quantities.read(inside(group, "lengthM"), cable.group(3)));
        return facts;
    }

    /** The number of conductors typed with a cross-section is that of the thing. */
    static void count(String typed, List<String> conductors) throws Misread {
        if (!conductors.isEmpty() && new BigDecimal(typed).compareTo(BigDecimal.valueOf(conductors.size())) != 0)
            throw new Misread(CellProblem.CABLE_COUNT, typed, String.join(" ", conductors));
    }

    private void put(Map<String, @Nullable String> facts, Field group, String name, String number) throws Misread {
        put(facts, group, name, number, "");
    }

    private void put(Map<String, @Nullable String> facts, Field group, String name, String number, String unit)
            throws Misread {
        if (!number.equals("?")) facts.put(name, quantities.read(inside(group, name), number + unit));
    }

    private Field inside(Field group, String name) {
        return table.find(group.path() + "." + name).orElseThrow();
    }

    /** The device in shorthand; nothing where it holds what shorthand cannot say. */
    @Nullable
    String overcurrentText(Field group, Map<String, String> facts) {
        String rated = number(group, facts, "ratedCurrentA");
        String curve = facts.get("curve");
        String kind = facts.get("kind");
        if (kind == null) return facts.keySet().equals(Set.of("ratedCurrentA")) ? rated + " A" : null;
        boolean breakers = facts.containsKey("energyLimitingClass")
                || facts.containsKey("largestBackupFuseA")
                || facts.containsKey("conditionalShortCircuitCurrentA");
        return switch (OvercurrentKind.valueOf(kind)) {
            case FUSE -> curve != null || breakers ? null : "gG " + rated;
            case MCB -> (curve == null ? "?" : curve) + rated;
            case CIRCUIT_BREAKER ->
                words.text(OvercurrentKind.class, kind) + " " + (curve == null ? "?" : curve) + rated;
        };
    }

    String residualText(Field group, Map<String, String> facts) {
        String rated = facts.containsKey("ratedCurrentA") ? number(group, facts, "ratedCurrentA") + " A " : "";
        String residual =
                facts.containsKey("ratedResidualCurrentA") ? number(group, facts, "ratedResidualCurrentA") : "? mA";
        String type = facts.getOrDefault("type", "?");
        return rated + residual + " " + type + (RcdDelay.SELECTIVE.name().equals(facts.get("delay")) ? " S" : "");
    }

    String cableText(Field group, Map<String, String> facts, List<String> conductors) {
        String count = conductors.isEmpty() ? "" : conductors.size() + "×";
        String section = number(group, facts, "crossSectionMm2") + " mm²";
        String length = facts.containsKey("lengthM") ? " " + number(group, facts, "lengthM") + " m" : "";
        return count + section + length;
    }

    private String number(Field group, Map<String, String> facts, String name) {
        String value = facts.get(name);
        return value == null || Numbers.parse(value) == null ? "?" : quantities.text(inside(group, name), value);
    }
}
