package tideover.papers.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tideover.engine.wiring.colour.Colour;
import tideover.engine.wiring.colour.ConductorColours;
import tideover.engine.wiring.colour.ConductorUse;
import tideover.papers.Wording;

/** Colours of conductors in words, the code behind them: on a print in black and white, and in bad light, words count. */
public final class ColourWords {

    private static final List<ConductorUse> CONDUCTORS =
            List.of(ConductorUse.L1, ConductorUse.L2, ConductorUse.L3, ConductorUse.N, ConductorUse.PE);

    private final Wording wording;

    public ColourWords(Wording wording) {
        this.wording = wording;
    }

    /** Name and code, such as "brown BN", with the colour at the ends where there is one. */
    public String of(@Nullable Colour colour, @Nullable Colour endMark) {
        if (colour == null) return "";
        if (endMark == null) return wording.text("wiring.colour", name(colour), colour.code());
        return wording.text("wiring.colour.marked", name(colour), name(endMark), colour.code() + "+" + endMark.code());
    }

    /** The name alone. */
    public String name(Colour colour) {
        return String.join("-", colour.hues().stream().map(wording::word).toList());
    }

    /** Colours that mean another conductor in this country than in devices and cables made to IEC 60445; mostly none. */
    List<String> clashing(ConductorColours colours, @Nullable String country) {
        List<String> clashes = new ArrayList<>();
        for (ConductorUse here : CONDUCTORS)
            for (ConductorUse elsewhere : CONDUCTORS)
                colours.find(country, here)
                        .map(ConductorColours.Row::colour)
                        .filter(colour -> here != elsewhere && isOf(colours, elsewhere, colour))
                        .ifPresent(colour ->
                                clashes.add(wording.text("wiring.clash", name(colour), here.name(), elsewhere.name())));
        return clashes.isEmpty() ? List.of() : List.of(wording.text("wiring.clashes", String.join(", ", clashes)));
    }

    private static boolean isOf(ConductorColours colours, ConductorUse use, Colour colour) {
        return colours.find(ConductorColours.EVERYWHERE, use)
                .filter(row -> row.colour().equals(colour))
                .isPresent();
    }

    /** Colours of earlier years that are others today, one sentence for each time. */
    List<String> older(ConductorColours colours, @Nullable String country) {
        Map<Integer, List<String>> uses = new TreeMap<>();
        for (ConductorColours.Row row : colours.older(country)) {
            boolean same = colours.find(country, row.use())
                    .filter(today -> today.colour().equals(row.colour()))
                    .isPresent();
            if (!same && row.untilYear() != null)
                uses.computeIfAbsent(row.untilYear(), year -> new ArrayList<>())
                        .add(wording.text("wiring.older.use", row.use().name(), name(row.colour())));
        }
        List<String> sentences = new ArrayList<>();
        uses.forEach(
                (year, of) -> sentences.add(wording.text("wiring.older", String.valueOf(year), String.join(", ", of))));
        return sentences;
    }
}
