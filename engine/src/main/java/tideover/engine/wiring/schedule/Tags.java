package tideover.engine.wiring.schedule;

import java.util.HashSet;
import java.util.Set;
import java.util.regex.Pattern;
import tideover.engine.installation.Installation;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** Short names of things: the reference designation their printed names begin with, else the printed name, else the id. */
final class Tags {

    /** One or more letters of a class and a number, as in IEC 81346. */
    private static final Pattern DESIGNATION = Pattern.compile("[A-Z]{1,3}[0-9]{1,4}");

    /** The main earthing terminal (IEC 60364-5-54). */
    private static final String MAIN_EARTH = "MET";

    private final Installation installation;
    private final Set<String> taken = new HashSet<>();

    Tags(Installation installation) {
        this.installation = installation;
        for (Thing thing : installation.things()) taken.add(of(thing));
    }

    String of(ThingId thing) {
        if (thing.equals(ThingId.MAIN_EARTH)) return MAIN_EARTH;
        return installation.find(thing).map(Tags::of).orElse(thing.text());
    }

    static String of(Thing thing) {
        String printed = thing.designation();
        if (printed == null || printed.isBlank()) return thing.id().text();
        String first = printed.split(" ", 2)[0];
        return DESIGNATION.matcher(first).matches() ? first : printed;
    }

    /** A name with these letters and the next number that nothing else bears. */
    String next(String letters) {
        int number = 1;
        while (!taken.add(letters + number)) number++;
        return letters + number;
    }
}
