package tideover.files.first;

import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.files.Field;
import tideover.files.FieldTable;
import tideover.files.cells.Typed;
import tideover.files.cells.Typing;

/** Reads the numbers of the first visit as people type them. Safe to share between threads. */
public final class FirstNumbers {
    private final FieldTable fields;
    private final Typing typing;

    public FirstNumbers(FieldTable fields, Typing typing) {
        this.fields = fields;
        this.typing = typing;
    }

    /** What was asked for, and in which unit a bare number counts. */
    public enum Asked {
        MAIN_FUSE("supply.mainFuse.ratedCurrentA", ""),
        PV("pvArrays.peakPowerW", " kW"),
        BATTERY("batteries.usableEnergyWh", " kWh"),
        INVERTER("inverters.ratedPowerVa", " kVA");

        private final String path;
        private final String unit;

        /** @param unit empty for that of the field */
        Asked(String path, String unit) {
            this.path = path;
            this.unit = unit;
        }
    }

    /**
     * What was typed, in the SI unit of its field; nothing at all, and zero, say that there is none.
     *
     * @param refused told why, where it cannot stand so
     */
    public @Nullable Double read(Asked asked, String typed, Consumer<Phrase> refused) {
        boolean bare = !typed.isEmpty() && Character.isDigit(typed.charAt(typed.length() - 1));
        Field field = fields.find(asked.path).orElseThrow();
        Typed meant = typing.read(field, bare ? typed + asked.unit : typed);
        if (meant instanceof Typed.NotUnderstood not) {
            refused.accept(not.problem().phrase());
            return null;
        }
        if (!(meant instanceof Typed.Value value) || value.text() == null) return null;
        double number = Double.parseDouble(value.text());
        if (number == 0) return null;
        Double min = field.min();
        Double max = field.max();
        if (min != null && number < min || max != null && number > max)
            refused.accept(Phrase.of("first.range", PhraseArg.verbatim(field.words()), PhraseArg.verbatim(typed)));
        return number;
    }
}
