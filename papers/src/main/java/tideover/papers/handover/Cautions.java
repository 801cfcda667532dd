package tideover.papers.handover;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.installation.Installation;
import tideover.engine.site.Battery;
import tideover.engine.site.Isolator;
import tideover.engine.site.PvArray;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.papers.Wording;

/** The warnings of a site, told of its own sources and isolators. */
final class Cautions {

    private Cautions() {}

    static List<String> of(Installation installation, Wording wording) {
        List<ThingId> sources = new ArrayList<>(List.of(ThingId.SUPPLY));
        for (Thing source : installation.inverters()) sources.add(source.id());
        for (Thing source : installation.all(Battery.class)) sources.add(source.id());
        for (Thing source : installation.all(PvArray.class)) sources.add(source.id());
        List<String> cautions = new ArrayList<>();
        cautions.add(wording.text("handover.caution.sources", wording.names(sources)));
        List<Isolator> isolators = installation.all(Isolator.class);
        if (!isolators.isEmpty())
            cautions.add(wording.text(
                    "handover.caution.isolators",
                    wording.joined(isolators.stream()
                            .map(isolator -> isolator(isolator, wording))
                            .toList())));
        if (!installation.formingInverters().isEmpty()) cautions.add(wording.text("handover.caution.island"));
        if (!installation.all(PvArray.class).isEmpty()) cautions.add(wording.text("handover.caution.pv"));
        if (sources.size() > 1) cautions.add(wording.text("handover.caution.capacitors"));
        cautions.add(wording.text("handover.caution.plan"));
        cautions.add(wording.text("handover.caution.medical"));
        cautions.add(wording.text("handover.caution.defer"));
        return cautions;
    }

    private static String isolator(Isolator isolator, Wording wording) {
        return isolator.isolates() == null
                ? wording.name(isolator.id())
                : wording.text("handover.isolator", wording.name(isolator.id()), wording.name(isolator.isolates()));
    }
}
