package tideover.files.first;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tideover.engine.site.Origin;
import tideover.engine.site.ThingKind;
import tideover.files.SiteFiles;
import tideover.files.text.JsonSink;
import tideover.files.text.Sink.Layout;

/** A site file in the making. */
final class Draft {
    static final String HOUSE = "house";
    static final String PLAN = "plan";

    private final Map<String, Part> singles = new LinkedHashMap<>();
    private final Map<String, Map<ThingKind, List<Part>>> sides = new LinkedHashMap<>();
    private final Map<String, Origin> evidence = new LinkedHashMap<>();

    Draft() {
        sides.put(HOUSE, new EnumMap<>(ThingKind.class));
        sides.put(PLAN, new EnumMap<>(ThingKind.class));
    }

    /** What stands in no list: {@code place}, {@code supply}. */
    void add(String name, Part part) {
        singles.put(name, part);
    }

    /** A thing of the house or the plan. */
    void add(String side, ThingKind kind, Part part) {
        Map<ThingKind, List<Part>> things = sides.getOrDefault(side, new EnumMap<>(ThingKind.class));
        things.computeIfAbsent(kind, k -> new ArrayList<>()).add(part);
        // In the house what nobody has said is an assumption anyway; in the plan it would be a decision.
        if (side.equals(PLAN)) for (String path : part.assumed()) said(part.id() + "." + path, Origin.ASSUMED);
    }

    /** Who says a fact. */
    void said(String about, Origin origin) {
        evidence.put(about, origin);
    }

    String json() {
        JsonSink out = new JsonSink(Layout.LINE);
        out.beginMapping(Layout.BLOCK);
        out.key("format");
        out.number(Integer.toString(SiteFiles.FORMAT));
        sides.forEach((side, things) -> {
            out.key(side);
            out.beginMapping(Layout.BLOCK);
            if (side.equals(HOUSE))
                singles.forEach((name, part) -> {
                    out.key(name);
                    part.write(out);
                });
            things.forEach((kind, parts) -> {
                out.key(kind.section());
                out.beginList(Layout.BLOCK);
                for (Part part : parts) part.write(out);
                out.endList();
            });
            out.endMapping();
        });
        out.key("evidence");
        out.beginList(Layout.BLOCK);
        evidence.forEach((about, origin) -> {
            out.beginMapping(Layout.LINE);
            out.key("about");
            out.text(about);
            out.key("origin");
            out.text(origin.name());
            out.endMapping();
        });
        out.endList();
        out.endMapping();
        return out.finish();
    }
}
