package tideover.files.cells;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.files.Field;
import tideover.files.text.Numbers;

/** Numbers as people type them: decimal comma or point, a unit behind, never a thousands separator. */
final class Quantities {

    /** Digits with whatever may part them, then what stands behind. */
    private static final Pattern TYPED =
            Pattern.compile("([+-]?)\\s*([0-9.,'’]+(?: [0-9.,'’]+)*)\\s*([^0-9.,'’ ].*)?", Pattern.DOTALL);

    private static final Pattern PLAIN = Pattern.compile("[0-9]*[.,]?[0-9]*");
    private static final int LONGEST = 40;
    private static final BigDecimal THOUSAND = BigDecimal.valueOf(1000);

    /** What may stand behind a number, by the unit of its field, and how much of that it is. */
    private static final Map<String, Map<String, BigDecimal>> UNITS = new LinkedHashMap<>();

    static {
        units("A", "A 1 mA 0.001 kA 1000");
        units("V", "V 1 mV 0.001 kV 1000");
        units("W", "W 1 kW 1000 MW 1000000");
        units("VA", "VA 1 kVA 1000");
        units("Wh", "Wh 1 kWh 1000 MWh 1000000");
        units("Ω", "Ω 1 mΩ 0.001 kΩ 1000 Ohm 1 mOhm 0.001 kOhm 1000");
        units("m", "m 1 mm 0.001 cm 0.01 km 1000");
        units("mm²", "mm² 1 mm2 1 mm^2 1 qmm 1");
        units("s", "s 1 ms 0.001 min 60 h 3600");
        units("Hz", "Hz 1 kHz 1000");
        units("°", "° 1 deg 1");
        units("°C", "°C 1 C 1");
        units("Nm", "Nm 1");
        units("bit/s", "bit/s 1 kbit/s 1000 Bd 1");
        units("", "% 0.01 × 1 x 1");
    }

    private final char decimal;

    /** @param decimal what parts whole and fraction where the text is typed */
    Quantities(char decimal) {
        this.decimal = decimal;
    }

    private static void units(String unit, String factors) {
        Map<String, BigDecimal> known = new LinkedHashMap<>();
        String[] parts = factors.split(" ");
        for (int i = 0; i < parts.length; i += 2) known.put(parts[i], new BigDecimal(parts[i + 1]));
        UNITS.put(unit, known);
    }

    /** The number in the unit of the field, in its shortest form. */
    String read(Field field, String typed) throws Misread {
        Matcher parts = TYPED.matcher(typed);
        if (typed.length() > LONGEST || !parts.matches()) throw new Misread(CellProblem.NUMBER, example(field));
        BigDecimal number = number(field, parts.group(2));
        String behind = parts.group(3);
        if (parts.group(1).equals("-")) number = number.negate();
        BigDecimal value = behind != null
                ? number.multiply(factor(field, behind))
                : isResidual(field) && isInMilliampere(field, number) ? number.movePointLeft(3) : number;
        return Numbers.shortest(value.doubleValue());
    }

    /** A number alone, without unit. */
    BigDecimal number(Field field, String digits) throws Misread {
        if (PLAIN.matcher(digits).matches()) {
            int at = Math.max(digits.indexOf(','), digits.indexOf('.'));
            if (at < 0) return new BigDecimal(digits);
            if (digits.length() == 1) throw new Misread(CellProblem.NUMBER, example(field));
            String whole = digits.substring(0, at);
            String rest = digits.substring(at + 1);
            boolean groups = rest.length() == 3 && !whole.isEmpty() && whole.length() <= 3 && !whole.startsWith("0");
            if (digits.charAt(at) != decimal && groups)
                throw new Misread(CellProblem.TWO_READINGS, whole + rest, whole + decimal + rest);
            return new BigDecimal((whole.isEmpty() ? "0" : whole) + "." + (rest.isEmpty() ? "0" : rest));
        }
        String grouped = withoutGroups(digits);
        if (grouped == null) throw new Misread(CellProblem.NUMBER, example(field));
        throw new Misread(CellProblem.THOUSANDS, grouped);
    }

    /** The number with its digits joined, where they stand in groups of three; nothing where they do not. */
    private @Nullable String withoutGroups(String digits) {
        Matcher matcher = Pattern.compile("([0-9]{1,3})((?:([ .,'’])[0-9]{3})(?:\\3[0-9]{3})*)(?:([.,])([0-9]+))?")
                .matcher(digits);
        if (!matcher.matches()) return null;
        String whole = matcher.group(1) + matcher.group(2).replaceAll("[^0-9]", "");
        String fraction = matcher.group(5);
        if (fraction == null) return whole;
        return matcher.group(4).equals(matcher.group(3)) ? null : whole + decimal + fraction;
    }

    private static BigDecimal factor(Field field, String behind) throws Misread {
        Map<String, BigDecimal> known = UNITS.getOrDefault(field.unit(), Map.of());
        String unit = behind.strip().replace(" ", "");
        BigDecimal exact = known.get(unit);
        if (exact != null) return exact;
        for (Map.Entry<String, BigDecimal> entry : known.entrySet()) {
            String name = entry.getKey();
            // Small and capital letters alike, but for milli and mega.
            if (name.equalsIgnoreCase(unit) && (name.charAt(0) == unit.charAt(0) || !isMilliOrMega(name)))
                return entry.getValue();
        }
        if (field.unit().isEmpty() && !unit.equals("%")) throw new Misread(CellProblem.NO_UNIT);
        throw new Misread(CellProblem.UNIT, behind.strip(), String.join(", ", known.keySet()));
    }

    private static boolean isMilliOrMega(String unit) {
        char first = unit.charAt(0);
        return unit.length() > 1 && (first == 'm' || first == 'M');
    }

    /** Whether a field holds a rated residual current: the trade tells it in mA. */
    static boolean isResidual(Field field) {
        return field.unit().equals("A") && field.name().toLowerCase(Locale.ROOT).contains("residual");
    }

    /** No rated residual current is as large in ampere as the smallest one is in milliampere. */
    private static boolean isInMilliampere(Field field, BigDecimal number) {
        Double min = field.min();
        Double max = field.max();
        return min != null
                && max != null
                && number.doubleValue() > max
                && number.compareTo(new BigDecimal(Double.toString(min)).multiply(THOUSAND)) >= 0;
    }

    /** What stands in the cell: every digit, no separators but the decimal one; residual currents in mA. */
    String text(Field field, String value) {
        BigDecimal number = new BigDecimal(value);
        if (!isResidual(field)) return plain(number);
        return plain(number.multiply(THOUSAND)) + " mA";
    }

    private String plain(BigDecimal number) {
        BigDecimal shortest = number.signum() == 0 ? BigDecimal.ZERO : number.stripTrailingZeros();
        return shortest.toPlainString().replace('.', decimal);
    }

    /** A number that could stand in the field. */
    private String example(Field field) {
        Double min = field.min();
        Double max = field.max();
        String number = plain(new BigDecimal(
                min == null || max == null ? "1" : min <= 2.5 && max >= 2.5 ? "2.5" : Numbers.shortest(min)));
        if (isResidual(field)) return "30 mA";
        return field.unit().isEmpty() ? number : number + " " + field.unit();
    }
}
