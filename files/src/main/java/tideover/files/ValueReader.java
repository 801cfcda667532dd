package tideover.files;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.TerminalId;
import tideover.engine.site.ThingId;
import tideover.files.text.Nearest;
import tideover.files.text.Numbers;
import tideover.files.yaml.Node;
import tideover.files.yaml.Node.Scalar;

/** Reads one value of a field: its type, its range, its words. */
final class ValueReader {
    static final int LONGEST_TEXT = 500;

    private final Problems problems;
    private final Nearest nearest;

    ValueReader(Problems problems, Nearest nearest) {
        this.problems = problems;
        this.nearest = nearest;
    }

    /** The value, or nothing after a problem. Only for kinds that are neither list nor group. */
    @Nullable
    Object read(RecordForm.Part part, Node node, String where) {
        Field field = part.field();
        if (!(node instanceof Scalar scalar)) {
            problems.add(node.spot(), where, ProblemKind.VALUE_EXPECTED, field.words());
            return null;
        }
        return switch (field.kind()) {
            case ID, REFERENCE, REFERENCES -> id(scalar, where);
            case TERMINAL -> terminal(field, scalar, where);
            case TEXT, TEXTS -> text(field, scalar, where);
            case NUMBER -> number(field, scalar, where);
            case WHOLE -> whole(field, scalar, where);
            case YES_NO -> yesNo(field, scalar, where);
            case WORD, WORDS -> word(part, scalar, where);
            case DATE -> date(field, scalar, where);
            case GROUP, GROUPS -> throw new IllegalArgumentException(field.path() + " is a group");
        };
    }

    private @Nullable ThingId id(Scalar scalar, String where) {
        if (ThingId.isWellFormed(scalar.text())) return new ThingId(scalar.text());
        problems.add(scalar.spot(), where, ProblemKind.ID_FORM, scalar.text());
        return null;
    }

    private @Nullable TerminalId terminal(Field field, Scalar scalar, String where) {
        if (TerminalId.isWellFormed(scalar.text())) return TerminalId.of(scalar.text());
        problems.add(scalar.spot(), where, ProblemKind.TERMINAL_FORM, field.words(), shortened(scalar.text()));
        return null;
    }

    private @Nullable String text(Field field, Scalar scalar, String where) {
        String text = scalar.text();
        // 12 and true are other things than text in JSON and YAML; quoted they are text.
        if (scalar.isPlain() && (text.equals("true") || text.equals("false") || Numbers.parse(text) != null)) {
            problems.add(scalar.spot(), where, ProblemKind.TEXT_EXPECTED, field.words(), text);
            return null;
        }
        if (text.isBlank()) {
            problems.add(scalar.spot(), where, ProblemKind.TEXT_EMPTY, field.words());
            return null;
        }
        int unprintable = unprintable(text);
        if (unprintable >= 0) {
            String code = "U+%04X".formatted((int) text.charAt(unprintable));
            problems.add(scalar.spot(), where, ProblemKind.TEXT_CHARACTER, field.words(), code);
            return null;
        }
        if (text.length() > LONGEST_TEXT) {
            problems.add(
                    scalar.spot(),
                    where,
                    ProblemKind.TEXT_TOO_LONG,
                    field.words(),
                    Integer.toString(text.length()),
                    Integer.toString(LONGEST_TEXT));
            return null;
        }
        return switch (field.path()) {
            case "place.country" -> Codes.country(scalar, where, problems, nearest);
            case "place.timeZone" -> Codes.timeZone(scalar, where, problems);
            default -> text;
        };
    }

    /** Where an escape made a character that no paper can show: a control, half a pair, a line end of other systems. */
    private static int unprintable(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (Character.isHighSurrogate(c) && i + 1 < text.length() && Character.isLowSurrogate(text.charAt(i + 1)))
                i++;
            else if (Character.isSurrogate(c) || c == 0x2028 || c == 0x2029 || c == 0xFEFF) return i;
            else if (Character.isISOControl(c) && c != '\n' && c != '\t') return i;
        }
        return -1;
    }

    private @Nullable Double number(Field field, Scalar scalar, String where) {
        String text = scalar.text();
        String found = shortened(text);
        Double value = Numbers.parse(text);
        if (value == null) {
            String withPoint = text.replace(',', '.');
            if (Numbers.isNotFinite(text))
                problems.add(scalar.spot(), where, ProblemKind.NUMBER_NOT_FINITE, field.words(), found);
            else if (text.indexOf(',') >= 0 && Numbers.parse(withPoint) != null)
                problems.add(
                        scalar.spot(), where, ProblemKind.NUMBER_COMMA, field.words(), found, shortened(withPoint));
            else if (field.unit().isEmpty())
                problems.add(scalar.spot(), where, ProblemKind.NUMBER_EXPECTED, field.words(), found);
            else problems.add(scalar.spot(), where, ProblemKind.NUMBER_EXPECTED_IN, field.words(), found, field.unit());
            return null;
        }
        if (!scalar.isPlain()) {
            problems.add(scalar.spot(), where, ProblemKind.NUMBER_QUOTED, field.words(), found);
            return null;
        }
        if (!Double.isFinite(value)) {
            problems.add(scalar.spot(), where, ProblemKind.NUMBER_NOT_FINITE, field.words(), found);
            return null;
        }
        double min = field.min() == null ? -Double.MAX_VALUE : field.min();
        double max = field.max() == null ? Double.MAX_VALUE : field.max();
        if (value >= min && value <= max) return value;
        String lowest = Numbers.shortest(min);
        String highest = Numbers.shortest(max);
        if (field.unit().isEmpty())
            problems.add(scalar.spot(), where, ProblemKind.NUMBER_RANGE, field.words(), found, lowest, highest);
        else
            problems.add(
                    scalar.spot(),
                    where,
                    ProblemKind.NUMBER_RANGE_IN,
                    field.words(),
                    found,
                    lowest,
                    highest,
                    field.unit());
        return null;
    }

    private @Nullable Integer whole(Field field, Scalar scalar, String where) {
        Double value = number(field, scalar, where);
        if (value == null) return null;
        // The ranges of the table keep every whole number well inside int.
        if (value == Math.rint(value)) return value.intValue();
        problems.add(scalar.spot(), where, ProblemKind.WHOLE_EXPECTED, field.words(), scalar.text());
        return null;
    }

    private @Nullable Boolean yesNo(Field field, Scalar scalar, String where) {
        if (scalar.isPlain() && scalar.text().equals("true")) return true;
        if (scalar.isPlain() && scalar.text().equals("false")) return false;
        problems.add(scalar.spot(), where, ProblemKind.YES_NO_EXPECTED, field.words(), shortened(scalar.text()));
        return null;
    }

    private @Nullable Object word(RecordForm.Part part, Scalar scalar, String where) {
        Object[] constants = part.element().getEnumConstants();
        for (Object constant : constants) if (((Enum<?>) constant).name().equals(scalar.text())) return constant;
        List<String> allowed = new ArrayList<>();
        for (Object constant : constants) allowed.add(((Enum<?>) constant).name());
        String near = nearest.of(scalar.text(), allowed);
        String list = String.join(", ", allowed);
        String found = shortened(scalar.text());
        String words = part.field().words();
        if (near == null) problems.add(scalar.spot(), where, ProblemKind.WORD_UNKNOWN, words, found, list);
        else problems.add(scalar.spot(), where, ProblemKind.WORD_UNKNOWN_NEAR, words, found, near, list);
        return null;
    }

    private @Nullable LocalDate date(Field field, Scalar scalar, String where) {
        String text = scalar.text();
        // Taken apart by hand: the platform's formatter is slow to start, and one form is allowed only.
        if (text.length() == 10 && text.charAt(4) == '-' && text.charAt(7) == '-') {
            int year = whole(text, 0, 4);
            int month = whole(text, 5, 7);
            int day = whole(text, 8, 10);
            if (year > 0
                    && month >= 1
                    && month <= 12
                    && day >= 1
                    && day <= YearMonth.of(year, month).lengthOfMonth()) return LocalDate.of(year, month, day);
        }
        problems.add(scalar.spot(), where, ProblemKind.DATE_EXPECTED, field.words(), shortened(text));
        return null;
    }

    private static int whole(String text, int from, int to) {
        int value = 0;
        for (int i = from; i < to; i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9) return -1;
            value = 10 * value + digit;
        }
        return value;
    }

    /** What was found, short enough for a message. */
    static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, text.offsetByCodePoints(0, 57)) + "…";
    }
}
