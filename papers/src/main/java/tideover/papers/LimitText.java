package tideover.papers;

import java.text.DecimalFormatSymbols;
import tideover.engine.rules.Limit;
import tideover.engine.rules.Unit;

/** Limits with all figures that the rule book has: nothing is rounded, nothing scaled. */
public final class LimitText {
    private LimitText() {}

    /** The number or the choice as the rule book has it. */
    public static String value(Limit limit) {
        Double number = limit.number();
        if (number == null) return String.valueOf(limit.choice());
        return number == Math.rint(number) ? String.valueOf(number.longValue()) : String.valueOf(number);
    }

    /** The same with the reader's decimal sign and the unit of the number. */
    public static String of(Limit limit, Wording words) {
        if (limit.number() == null) return value(limit);
        char decimal = DecimalFormatSymbols.getInstance(words.locale()).getDecimalSeparator();
        String value = value(limit).replace('.', decimal).replace('-', '−');
        return limit.unit() == Unit.RATIO ? value : value + " " + words.word(limit.unit());
    }
}
