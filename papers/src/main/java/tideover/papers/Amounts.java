package tideover.papers;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import tideover.engine.rules.Unit;

/**
 * Quantities as the trade writes them: three figures that count, thousands as k, residual currents in mA, long times in
 * minutes or hours.
 */
final class Amounts {

    /** Figures that count, unless two amounts beside one another need more to be told apart. */
    static final int FIGURES = 3;

    /** No figure beyond this is asked for: a difference smaller than that is none. */
    static final int MOST_FIGURES = 7;

    private final char decimal;

    Amounts(Locale locale) {
        decimal = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    }

    /** A finite amount with its unit. */
    String of(double value, Unit unit, int figures) {
        return switch (unit) {
            case A -> kilo(value, 1000, "A", figures);
            case V -> number(value, figures) + " V";
            case W -> kilo(value, 1000, "W", figures);
            case VA -> kilo(value, 1000, "VA", figures);
            case WH -> kilo(value, 1000, "Wh", figures);
            case OHM -> number(value, figures) + " Ω";
            case OHM_PER_KM -> number(value, figures) + " Ω/km";
            case M -> number(value, figures) + " m";
            case MM2 -> number(value, figures) + " mm²";
            case S -> time(value, figures);
            case HZ -> number(value, figures) + " Hz";
            case A2S -> kilo(value, 10_000, "A²s", figures);
            case NM -> number(value, figures) + " Nm";
            case BIT_PER_S -> number(value, MOST_FIGURES) + " bit/s";
            case DEG_C -> number(value, figures) + " °C";
            case RESIDUAL_A -> number(value * 1000, figures) + " mA";
            case PERCENT -> number(value * 100, figures) + " %";
            case RATIO -> number(value, figures);
            case COUNT -> number(value, MOST_FIGURES);
        };
    }

    private String kilo(double value, double from, String unit, int figures) {
        return Math.abs(value) >= from
                ? number(value / 1000, figures) + " k" + unit
                : number(value, figures) + " " + unit;
    }

    private String time(double seconds, int figures) {
        if (Math.abs(seconds) >= 3600) return number(seconds / 3600, figures) + " h";
        if (Math.abs(seconds) > 120) return number(seconds / 60, figures) + " min";
        return number(seconds, figures) + " s";
    }

    /** Rounded to figures that count, no trailing zeros, never with an exponent; whole numbers keep all their digits. */
    String number(double value, int figures) {
        if (value == 0) return "0";
        int whole = (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        BigDecimal rounded = new BigDecimal(value)
                .round(new MathContext(Math.max(figures, Math.max(whole, 1)), RoundingMode.HALF_UP));
        String text = rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
        return (decimal == '.' ? text : text.replace('.', decimal)).replace('-', '−');
    }
}
