package tideover.files.cells;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import tideover.files.Field;
import tideover.files.text.Nearest;

/** Words of a fixed list as people type them: as they are printed, as they are called in a file, or begun. */
final class Words {

    /** Fewer letters begin too many words. */
    private static final int FEWEST_LETTERS = 3;

    private final Function<Enum<?>, String> printed;
    private final Nearest nearest = new Nearest();

    Words(Function<Enum<?>, String> printed) {
        this.printed = printed;
    }

    /** The word as it is printed in a cell. */
    String text(Class<?> type, String name) {
        for (Enum<?> word : constants(type)) if (word.name().equals(name)) return printed.apply(word);
        return name;
    }

    /** All words, as they are printed. */
    List<String> printed(Class<?> type) {
        List<String> all = new ArrayList<>();
        for (Enum<?> word : constants(type)) all.add(printed.apply(word));
        return all;
    }

    /** The name of the word that was typed. */
    String read(Field field, Class<?> type, String typed) throws Misread {
        List<Enum<?>> words = constants(type);
        String found = find(words, typed);
        int blank = typed.indexOf(' ');
        // "type B", "curve C": what the field is called may stand before its word.
        if (found == null && blank > 0 && calls(field, typed.substring(0, blank)))
            found = find(words, typed.substring(blank + 1));
        if (found != null) return found;
        List<String> allowed = printed(type);
        String near = nearest.of(typed, allowed);
        String list = String.join("; ", allowed);
        throw near == null ? new Misread(CellProblem.WORD, list) : new Misread(CellProblem.WORD_NEAR, near, list);
    }

    private static boolean calls(Field field, String word) {
        return (" " + field.words().toLowerCase(Locale.ROOT) + " ").contains(" " + word.toLowerCase(Locale.ROOT) + " ");
    }

    private @Nullable String find(List<Enum<?>> words, String typed) {
        String wanted = letters(typed);
        if (wanted.isEmpty()) return null;
        for (Enum<?> word : words) if (letters(word.name()).equals(wanted)) return word.name();
        for (Enum<?> word : words) if (letters(printed.apply(word)).equals(wanted)) return word.name();
        if (wanted.length() < FEWEST_LETTERS) return null;
        List<String> begun = new ArrayList<>();
        for (Enum<?> word : words)
            if (letters(word.name()).startsWith(wanted)
                    || letters(printed.apply(word)).startsWith(wanted)) begun.add(word.name());
        return begun.size() == 1 ? begun.get(0) : null;
    }

    /** Letters and digits alone, small: hyphens, dashes and blanks are typed in many ways. */
    private static String letters(String text) {
        StringBuilder letters = new StringBuilder(text.length());
        text.toLowerCase(Locale.ROOT)
                .codePoints()
                .filter(Character::isLetterOrDigit)
                .forEach(letters::appendCodePoint);
        return letters.toString();
    }

    private static List<Enum<?>> constants(Class<?> type) {
        List<Enum<?>> constants = new ArrayList<>();
        Object[] all = type.getEnumConstants();
        if (all == null) throw new IllegalArgumentException(type + " has no words");
        for (Object constant : all) constants.add((Enum<?>) constant);
        return constants;
    }

    /** Yes or no, as a file has it. */
    String yesNo(String typed) throws Misread {
        String yes = printed.apply(YesNo.YES);
        String no = printed.apply(YesNo.NO);
        String wanted = letters(typed);
        if (typed.equals("✓")
                || List.of("true", "yes", "y", "x", "1", letters(yes)).contains(wanted)) return "true";
        if (typed.equals("✕") || List.of("false", "no", "n", "0", letters(no)).contains(wanted)) return "false";
        throw new Misread(CellProblem.YES_NO, yes, no);
    }

    String yesNoText(String value) {
        return printed.apply(value.equals("true") ? YesNo.YES : YesNo.NO);
    }
}
