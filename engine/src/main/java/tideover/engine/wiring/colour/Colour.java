package tideover.engine.wiring.colour;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The colour of a conductor: one hue, or several side by side such as green-yellow.
 *
 * @param hues one or more
 * @see "IEC 60757"
 */
public record Colour(List<Hue> hues) {

    private static final int LETTERS = 2;

    public Colour {
        if (hues.isEmpty()) throw new IllegalArgumentException("a colour has a hue");
        hues = List.copyOf(hues);
    }

    /** Reads a code such as {@code BU}, {@code GNYE} or {@code WH/BN}; nothing for anything else, such as a core's number. */
    public static Optional<Colour> find(String code) {
        String letters = code.replaceAll("[/+ -]", "");
        if (letters.isEmpty() || letters.length() % LETTERS != 0) return Optional.empty();
        List<Hue> hues = new ArrayList<>();
        for (int at = 0; at < letters.length(); at += LETTERS) {
            String hue = letters.substring(at, at + LETTERS);
            Arrays.stream(Hue.values())
                    .filter(known -> known.name().equals(hue))
                    .forEach(hues::add);
        }
        return hues.size() * LETTERS == letters.length() ? Optional.of(new Colour(hues)) : Optional.empty();
    }

    /** Its code. */
    public String code() {
        StringBuilder code = new StringBuilder();
        hues.forEach(hue -> code.append(hue.name()));
        return code.toString();
    }
}
