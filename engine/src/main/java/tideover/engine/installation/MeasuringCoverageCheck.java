package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.Meter;
import tideover.engine.site.MeterRole;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** The inverter system's meter sees every circuit and every inverter of the house. */
final class MeasuringCoverageCheck implements Check<Installation> {

    @Override
    public String id() {
        return "measuring.coverage";
    }

    @Override
    public void judge(Installation installation, Judging judging) {
        Optional<Limit> limit = judging.limit("measuring.coverage");
        for (Meter meter : installation.meters()) {
            if (meter.role() != MeterRole.SYSTEM) continue;
            if (limit.isEmpty()) {
                judging.at(meter.id()).openForLimit("measuring.coverage");
                continue;
            }
            List<ThingId> unseen = new ArrayList<>(0);
            Set<FactId> missing = new LinkedHashSet<>();
            Set<FactId> assumed = new LinkedHashSet<>();
            for (Thing thing : installation.things()) {
                if (!(thing instanceof Circuit || thing instanceof Inverter) || !(thing instanceof Fed fed)) continue;
                assumed.addAll(installation.assumedWiring(fed.id()));
                List<ThingId> way = installation.wayFromSupply(fed.id());
                if (way.contains(meter.id())) continue;
                if (way.contains(ThingId.SUPPLY)) unseen.add(fed.id());
                else missing.addAll(installation.gaps(fed));
            }
            for (ThingId id : unseen)
                judging.at(id).by(limit.get()).notMet("measuring.coverage.unseen", name(id), name(meter.id()));
            if (!missing.isEmpty()) judging.at(meter.id()).by(limit.get()).openFor(List.copyOf(missing));
            else if (unseen.isEmpty())
                judging.at(meter.id()).by(limit.get()).on(assumed).met("measuring.coverage.all", name(meter.id()));
        }
    }
}
