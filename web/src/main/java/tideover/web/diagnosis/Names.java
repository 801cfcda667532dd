package tideover.web.diagnosis;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import tideover.engine.site.Battery;
import tideover.engine.site.Circuit;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.Meter;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.mistake.Mistake;
import tideover.engine.wiring.procedure.PlannedReading;
import tideover.papers.diagnosis.CallFact;
import tideover.papers.wiring.MistakeWording;
import tideover.papers.wiring.WiringModel;
import tideover.papers.wiring.WiringWording;
import tideover.web.work.Work;

/** Sentences about a house, the things in them linked. */
final class Names {
    /** What trees speak of by name. */
    private static final Set<Class<? extends Thing>> SPOKEN_OF =
            Set.of(Inverter.class, IslandingSwitch.class, NeutralEarthSwitch.class, Battery.class, Meter.class);

    /** Facts that name circuits; in others their names would be words like any other. */
    private static final Set<CallFact> OF_CIRCUITS = Set.of(CallFact.LINES, CallFact.GRID_ONLY, CallFact.RCDS);

    private final Work work;
    private final WiringWording words;
    private final MistakeWording mistakes;
    private final Map<String, String> devices = new LinkedHashMap<>();
    private final Map<String, String> spokenOf = new LinkedHashMap<>();
    private final Map<String, String> all = new LinkedHashMap<>();

    Names(Work work, WiringModel model) {
        this.work = work;
        this.words = model.words();
        this.mistakes = new MistakeWording(words, model.house());
        for (Thing thing : model.house().installation().things()) {
            String name = words.name(thing.id());
            work.address(thing.id()).ifPresent(address -> {
                all.put(name, address);
                if (!(thing instanceof Circuit)) devices.put(name, address);
                if (SPOKEN_OF.contains(thing.getClass())) spokenOf.put(name, address);
            });
        }
    }

    /** A question of a tree, or what to do. */
    Linked call(String text) {
        return Linked.of(text, spokenOf);
    }

    /** A line of a fact. */
    Linked fact(CallFact fact, String line) {
        return Linked.of(line, OF_CIRCUITS.contains(fact) ? all : devices);
    }

    /** A mistake or failure, led to where it was made and to what else has part in it. */
    Linked mistake(Mistake mistake) {
        return linked(mistakes.heading(mistake), List.of(mistake.place(), mistake.other()));
    }

    /** A reading with its situation, led to where it is taken. */
    Linked reading(PlannedReading planned) {
        return linked(
                words.words().capitalised(words.whole(planned)),
                List.of(planned.reading().place()));
    }

    private Linked linked(String text, List<ThingId> things) {
        Map<String, String> names = new LinkedHashMap<>();
        Map<String, String> needed = new LinkedHashMap<>();
        for (ThingId thing : things)
            work.address(thing).ifPresent(address -> {
                needed.putIfAbsent(words.name(thing), address);
                names.putIfAbsent(words.name(thing), address);
                names.putIfAbsent(words.tag(thing), address);
            });
        return Linked.of(text, names).and(needed);
    }
}
