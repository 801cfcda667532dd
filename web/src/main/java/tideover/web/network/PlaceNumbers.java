package tideover.web.network;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.network.house.PlaceFlow;
import tideover.engine.site.Conductor;
import tideover.papers.Wording;

/** Columns of the table of places: one decimal, nothing where there is nothing; only lines that the house has. */
final class PlaceNumbers {
    private static final List<Conductor> LINES = List.of(Conductor.L1, Conductor.L2, Conductor.L3);

    private final Wording words;
    private final List<Conductor> lines;

    PlaceNumbers(List<PlaceFlow> places, Wording words) {
        this.words = words;
        this.lines = LINES.stream()
                .filter(line -> places.stream()
                        .anyMatch(place -> place.currentA().containsKey(line)
                                || place.voltageV().containsKey(line)))
                .toList();
    }

    List<String> heads() {
        List<String> heads = new ArrayList<>();
        for (Conductor line : lines) heads.add(words.text("network.head.voltage", words.word(line)));
        heads.add(words.text("network.column.shift"));
        heads.add(words.text("network.column.drop"));
        for (Conductor line : lines) heads.add(words.text("network.head.current", words.word(line)));
        heads.add(words.text("network.head.current", words.word(Conductor.N)));
        heads.add(words.text("network.head.current", words.word(Conductor.PE)));
        return heads;
    }

    List<String> of(PlaceFlow place) {
        List<String> numbers = new ArrayList<>();
        for (Conductor line : lines) numbers.add(number(place.voltageV().get(line)));
        numbers.add(number(place.neutralShiftV()));
        Double dropRatio = place.dropRatio();
        numbers.add(number(dropRatio == null ? null : (Double) (100 * dropRatio)));
        for (Conductor line : lines) numbers.add(number(place.currentA().get(line)));
        boolean hasNeutral =
                place.currentA().containsKey(Conductor.N) || place.currentA().containsKey(Conductor.PEN);
        numbers.add(number(hasNeutral ? (Double) place.neutralA() : null));
        numbers.add(number(place.currentA().get(Conductor.PE)));
        return numbers;
    }

    /** What would be minus nothing is nothing. */
    private String number(@Nullable Double value) {
        if (value == null) return "";
        double rounded = Math.rint(10 * value) / 10;
        return String.format(words.locale(), "%.1f", rounded == 0 ? 0.0 : rounded);
    }
}
