package tideover.files.cells;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.ThingId;
import tideover.files.text.Nearest;

/** Things by id or by printed name. Where no names are given every well-formed id will do. */
final class Names {

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern SEPARATOR = Pattern.compile("[,;\\n]");

    private final Map<ThingId, String> printed;
    private final Map<String, List<String>> ids = new HashMap<>();
    private final Nearest nearest = new Nearest();

    Names(Map<ThingId, String> printed) {
        this.printed = Map.copyOf(printed);
        printed.forEach((id, name) ->
                ids.computeIfAbsent(plain(name), key -> new ArrayList<>()).add(id.text()));
    }

    private static String plain(String name) {
        return BLANKS.matcher(name.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
    }

    /** The id of the thing that was typed. */
    String read(String typed) throws Misread {
        String id = typed.toLowerCase(Locale.ROOT);
        boolean formed = ThingId.isWellFormed(id);
        if (formed && (printed.isEmpty() || printed.containsKey(new ThingId(id)) || id.equals(ThingId.SUPPLY.text())))
            return id;
        List<String> bearers = ids.getOrDefault(plain(typed), List.of());
        if (bearers.size() == 1) return bearers.get(0);
        if (bearers.size() > 1)
            throw new Misread(
                    CellProblem.THING_TWICE,
                    String.join(", ", bearers.stream().sorted().toList()));
        List<String> candidates = new ArrayList<>(printed.values());
        for (ThingId known : printed.keySet()) candidates.add(known.text());
        String near = nearest.of(typed, candidates.stream().sorted().toList());
        throw near == null ? new Misread(CellProblem.THING) : new Misread(CellProblem.THING_NEAR, near);
    }

    /** The ids of several things, parted by commas or semicolons; ids also by blanks. */
    List<String> readAll(String typed) throws Misread {
        List<String> all = new ArrayList<>();
        boolean parted = typed.matches("[a-z0-9 -]+") && !ids.containsKey(plain(typed));
        for (String part : parted ? typed.split(" +") : SEPARATOR.split(typed))
            if (!part.isBlank()) all.add(read(part.strip()));
        return all;
    }

    /** The printed name where it stands for this thing alone, else its id. */
    String text(String id) {
        String name = ThingId.isWellFormed(id) ? printed.get(new ThingId(id)) : null;
        return name != null && readsAs(name, id) ? name : id;
    }

    private boolean readsAs(@Nullable String name, String id) {
        try {
            // A comma would part the name in a list.
            return name != null
                    && !SEPARATOR.matcher(name).find()
                    && read(name.strip()).equals(id)
                    && readAll(name).equals(List.of(id));
        } catch (Misread e) {
            return false;
        }
    }
}
