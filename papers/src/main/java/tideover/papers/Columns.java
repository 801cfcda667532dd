package tideover.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tideover.engine.network.house.PlaceFlow;
import tideover.engine.site.Conductor;

/** Places and numbers in columns of plain text: names left, numbers right, one decimal, nothing where there is nothing. */
final class Columns {

    private static final int NAME = 30;
    private static final int NUMBER = 6;
    private static final int WIDE = 7;

    private final Locale locale;
    private final List<String> lines = new ArrayList<>();

    Columns(Locale locale) {
        this.locale = locale;
    }

    void head(String name, List<String> voltages, List<String> between, List<String> currents) {
        StringBuilder line = new StringBuilder(left(name, NAME));
        voltages.forEach(head -> line.append(right(head, NUMBER)));
        between.forEach(head -> line.append(right(head, WIDE)));
        currents.forEach(head -> line.append(right(head, NUMBER)));
        lines.add(line.toString());
    }

    void row(String name, PlaceFlow place) {
        StringBuilder line = new StringBuilder(left(name, NAME));
        for (Conductor conductor : List.of(Conductor.L1, Conductor.L2, Conductor.L3))
            line.append(right(number(place.voltageV().get(conductor)), NUMBER));
        line.append(right(number(place.neutralShiftV()), WIDE));
        Double dropRatio = place.dropRatio();
        line.append(right(number(dropRatio == null ? null : 100 * dropRatio), WIDE));
        for (Conductor conductor : List.of(Conductor.L1, Conductor.L2, Conductor.L3))
            line.append(right(number(place.currentA().get(conductor)), NUMBER));
        boolean neutral =
                place.currentA().containsKey(Conductor.N) || place.currentA().containsKey(Conductor.PEN);
        line.append(right(number(neutral ? place.neutralA() : null), NUMBER));
        line.append(right(number(place.currentA().get(Conductor.PE)), NUMBER));
        lines.add(line.toString());
    }

    List<String> lines() {
        return List.copyOf(lines);
    }

    /** One decimal; what would be minus nothing is nothing. */
    private String number(@Nullable Double value) {
        if (value == null) return "";
        double rounded = Math.rint(10 * value) / 10;
        return String.format(locale, "%.1f", rounded == 0 ? 0.0 : rounded);
    }

    /** Cut where it is too long, with a space behind it. */
    static String left(String text, int width) {
        String cut = text.length() < width ? text : text.substring(0, width - 2) + "…";
        return cut + " ".repeat(width - cut.length());
    }

    static String right(String text, int width) {
        return text.length() >= width ? " " + text : " ".repeat(width - text.length()) + text;
    }
}
