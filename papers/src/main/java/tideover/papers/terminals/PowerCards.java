package tideover.papers.terminals;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import tideover.engine.installation.Edge;
import tideover.engine.installation.Installation;
import tideover.engine.site.Board;
import tideover.engine.site.ByPass;
import tideover.engine.site.Conductor;
import tideover.engine.site.Fed;
import tideover.engine.site.Meter;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.OvercurrentKind;
import tideover.engine.site.ProtectiveDevice;
import tideover.engine.site.RcdGroup;
import tideover.engine.site.Terminals;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.schedule.PowerEnd;
import tideover.engine.wiring.schedule.PowerRow;
import tideover.engine.wiring.schedule.PowerSchedule;

/** The power terminals of each device, read off the power schedule. */
final class PowerCards {

    /** More conductors at one terminal than this are parted into several rows, so that a page can turn between them. */
    private static final int MOST_LEADS = 8;

    private final Installation installation;
    private final PowerSchedule schedule;
    private final LeadWords words;
    private final Set<String> switched = new LinkedHashSet<>();
    private final Map<String, String> notes = new HashMap<>();

    PowerCards(Installation installation, PowerSchedule schedule, LeadWords words) {
        this.installation = installation;
        this.schedule = schedule;
        this.words = words;
        for (Edge edge : installation.edges())
            if (edge.part() == Edge.Part.CONTACT) switched.add(edge.thing().id() + "." + edge.conductor());
    }

    /** The rows of one device: conductor by conductor, grid side left. */
    List<Row> rows(ThingId device) {
        Map<Conductor, Map<String, List<Lead>>> left = new TreeMap<>();
        Map<Conductor, Map<String, List<Lead>>> right = new TreeMap<>();
        notes.clear();
        for (PowerRow row : schedule.at(device)) {
            if (row.from().thing().equals(device)) add(row, row.from(), row.to(), left, right);
            if (row.to().thing().equals(device)) add(row, row.to(), row.from(), left, right);
        }
        Thing thing = installation.find(device).orElse(null);
        List<Row> rows = new ArrayList<>();
        if (thing instanceof NeutralEarthSwitch) {
            rows.addAll(together(posts(left, Conductor.N), posts(right, Conductor.PE), Picture.MAKE));
            return rows;
        }
        Set<Conductor> conductors = new LinkedHashSet<>();
        for (Conductor conductor : Conductor.values())
            if (left.containsKey(conductor) || right.containsKey(conductor)) conductors.add(conductor);
        for (Conductor conductor : conductors)
            rows.addAll(together(posts(left, conductor), posts(right, conductor), picture(thing, conductor)));
        return rows;
    }

    private void add(
            PowerRow row,
            PowerEnd here,
            PowerEnd other,
            Map<Conductor, Map<String, List<Lead>>> left,
            Map<Conductor, Map<String, List<Lead>>> right) {
        notes.put(here.terminal(), words.demands(here));
        (here.side() == Terminals.OUTGOING ? right : left)
                .computeIfAbsent(row.conductor(), conductor -> new LinkedHashMap<>())
                .computeIfAbsent(here.terminal(), terminal -> new ArrayList<>())
                .add(words.of(row, other));
    }

    private List<Post> posts(Map<Conductor, Map<String, List<Lead>>> side, Conductor conductor) {
        List<Post> posts = new ArrayList<>();
        side.getOrDefault(conductor, Map.of()).forEach((name, leads) -> {
            for (int begin = 0; begin < leads.size(); begin += MOST_LEADS)
                posts.add(new Post(
                        name,
                        notes.getOrDefault(name, ""),
                        leads.subList(begin, Math.min(leads.size(), begin + MOST_LEADS))));
        });
        return posts;
    }

    /** The first terminals of both sides face one another; further ones have rows of their own. */
    private static List<Row> together(List<Post> left, List<Post> right, Picture picture) {
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < Math.max(left.size(), right.size()); i++) {
            Post one = i < left.size() ? left.get(i) : null;
            Post other = i < right.size() ? right.get(i) : null;
            rows.add(new Row("", one, other, shown(picture, one, other)));
        }
        return rows;
    }

    private static Picture shown(Picture picture, @Nullable Post left, @Nullable Post right) {
        return left != null && right != null || picture == Picture.BAR ? picture : Picture.NONE;
    }

    private Picture picture(@Nullable Thing thing, Conductor conductor) {
        if (thing == null || thing instanceof Board) return Picture.BAR;
        if (switched.contains(thing.id() + "." + conductor)) return Picture.MAIN_CONTACT;
        if (thing instanceof ByPass) return Picture.HAND_SWITCH;
        if (!conductor.isLine() && !(thing instanceof RcdGroup && conductor == Conductor.N)) return Picture.THROUGH;
        if (thing instanceof RcdGroup) return Picture.RESIDUAL;
        if (thing instanceof Meter) return Picture.METER;
        if (thing instanceof ProtectiveDevice && thing instanceof Fed fed && fed.protection() != null)
            return fed.protection().kind() == OvercurrentKind.FUSE ? Picture.FUSE : Picture.BREAKER;
        return Picture.THROUGH;
    }
}
