package tideover.papers;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tideover.engine.rules.Unit;
import tideover.engine.site.Core;
import tideover.engine.site.FactId;
import tideover.engine.site.OverloadPoint;
import tideover.engine.site.TerminalId;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** The facts of things, and their values as the trade writes them. */
public final class FactText {

    /** Ends of field names and the unit they stand for; longer ends first, as one may end with another. */
    private static final Map<String, Unit> UNITS = new LinkedHashMap<>();

    static {
        UNITS.put("OhmPerKm", Unit.OHM_PER_KM);
        UNITS.put("Ohm", Unit.OHM);
        UNITS.put("DegC", Unit.DEG_C);
        UNITS.put("Mm2", Unit.MM2);
        UNITS.put("A2s", Unit.A2S);
        UNITS.put("BitPerS", Unit.BIT_PER_S);
        UNITS.put("Nm", Unit.NM);
        UNITS.put("Va", Unit.VA);
        UNITS.put("Wh", Unit.WH);
        UNITS.put("Hz", Unit.HZ);
        UNITS.put("A", Unit.A);
        UNITS.put("V", Unit.V);
        UNITS.put("W", Unit.W);
        UNITS.put("M", Unit.M);
        UNITS.put("S", Unit.S);
    }

    private final Wording wording;

    public FactText(Wording wording) {
        this.wording = wording;
    }

    /** The facts known of a thing, in the order of the record; its id and printed name are none. */
    public static List<FactId> known(Thing thing) {
        List<FactId> facts = new ArrayList<>();
        add(thing, (Record) thing, "", facts);
        return facts;
    }

    private static void add(Thing thing, Record record, String before, List<FactId> facts) {
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            String field = before + component.getName();
            if (field.equals("id") || field.equals("designation")) continue;
            try {
                Object value = component.getAccessor().invoke(record);
                if (value instanceof Record group && !(value instanceof ThingId)) add(thing, group, field + ".", facts);
                else if (value != null) facts.add(thing.fact(field));
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException("cannot read " + field + " of " + thing.id(), e);
            }
        }
    }

    /** The value of a known fact, with its unit. */
    public String value(Thing thing, FactId fact) {
        return text(fact.field(), Objects.requireNonNull(thing.value(fact.field()), fact.toString()));
    }

    private String text(String field, Object value) {
        if (value instanceof Double number) return quantity(field, number);
        if (value instanceof Enum<?> word) return wording.word(word);
        if (value instanceof ThingId thing) return wording.name(thing);
        if (value instanceof Boolean flag) return wording.text(flag ? "handover.yes" : "handover.no");
        if (value instanceof OverloadPoint point) return point(point);
        if (value instanceof Core core) return core(core);
        if (value instanceof List<?> several)
            return several.isEmpty()
                    ? wording.text("handover.none")
                    : wording.joined(
                            several.stream().map(one -> text(field, one)).toList());
        return value.toString();
    }

    private String quantity(String field, double value) {
        // Rated residual currents are told in mA; other currents of a few mA do not occur.
        if (field.toLowerCase(Locale.ROOT).contains("residual")) return wording.amount(value, Unit.RESIDUAL_A);
        for (Map.Entry<String, Unit> unit : UNITS.entrySet())
            if (field.endsWith(unit.getKey())) return wording.amount(value, unit.getValue());
        String number = wording.amount(value, Unit.RATIO);
        return field.endsWith("Deg") ? number + "°" : number;
    }

    private String point(OverloadPoint point) {
        return wording.text(
                "handover.overload", amount(point.currentRatio(), Unit.RATIO), amount(point.timeS(), Unit.S));
    }

    private String core(Core core) {
        String mark = core.mark() == null ? "?" : core.mark();
        if (core.from() == null && core.to() == null) return wording.text("handover.core.spare", mark);
        return wording.text("handover.core", mark, end(core.from()), end(core.to()));
    }

    private static String end(@Nullable TerminalId terminal) {
        return terminal == null ? "?" : terminal.toString();
    }

    private String amount(@Nullable Double value, Unit unit) {
        return value == null ? "?" : wording.amount(value, unit);
    }
}
