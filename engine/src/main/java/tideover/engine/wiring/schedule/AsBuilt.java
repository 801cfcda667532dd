package tideover.engine.wiring.schedule;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import tideover.engine.site.FactId;
import tideover.engine.site.Nameplate;
import tideover.engine.site.Site;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/**
 * What was built, held against the plan.
 *
 * @param differences facts of planned things that are otherwise as built
 * @param added       things nobody had planned
 * @param nameplates  what the devices built in say of themselves
 */
public record AsBuilt(
        List<Difference> differences, List<ThingId> added, List<ThingId> removed, List<Nameplate> nameplates) {

    /** How a fact differs. */
    public enum Kind {
        /** Another value. */
        CHANGED,
        /** Not known any more: another device was delivered, and nobody has stated this of it. */
        UNKNOWN_AGAIN,
        /** Known only now. */
        KNOWN_NOW
    }

    /** One fact that differs. */
    public record Difference(FactId fact, Kind kind) {}

    public AsBuilt {
        differences = List.copyOf(differences);
        added = List.copyOf(added);
        removed = List.copyOf(removed);
        nameplates = List.copyOf(nameplates);
    }

    /** Holds a site against its own plan. */
    public static AsBuilt of(Site site) {
        Map<ThingId, Thing> planned = site.asPlanned().planned();
        Map<ThingId, Thing> built = site.planned();
        List<Difference> differences = new ArrayList<>();
        List<ThingId> added = new ArrayList<>();
        List<Nameplate> nameplates = new ArrayList<>();
        built.forEach((id, thing) -> {
            if (thing instanceof Nameplate nameplate) {
                nameplates.add(nameplate);
                return;
            }
            Thing before = planned.get(id);
            if (before == null) added.add(id);
            else if (!before.equals(thing))
                for (String field : fields(thing.getClass())) compare(before, thing, field, differences);
        });
        return new AsBuilt(differences, added, site.built().removed(), nameplates);
    }

    private static void compare(Thing planned, Thing built, String field, List<Difference> differences) {
        Object before = planned.value(field);
        Object now = built.value(field);
        if (Objects.equals(before, now)) return;
        Kind kind = now == null ? Kind.UNKNOWN_AGAIN : before == null ? Kind.KNOWN_NOW : Kind.CHANGED;
        differences.add(new Difference(built.fact(field), kind));
    }

    /** The fields of a thing; of groups of facts the fields inside. */
    private static List<String> fields(Class<? extends Thing> kind) {
        List<String> fields = new ArrayList<>();
        for (RecordComponent part : kind.getRecordComponents()) {
            Class<?> type = part.getType();
            if (!type.isRecord() || type == ThingId.class) {
                fields.add(part.getName());
                continue;
            }
            for (RecordComponent inner : type.getRecordComponents()) fields.add(part.getName() + "." + inner.getName());
        }
        return fields;
    }

    /** Whether nothing differs and no device says anything of itself. */
    public boolean isEmpty() {
        return differences.isEmpty() && added.isEmpty() && removed.isEmpty() && nameplates.isEmpty();
    }
}
