package tideover.engine.installation;

import static tideover.engine.rules.PhraseArg.name;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import tideover.engine.rules.Check;
import tideover.engine.rules.Judging;
import tideover.engine.rules.Limit;
import tideover.engine.site.Circuit;
import tideover.engine.site.Fed;
import tideover.engine.site.Inverter;
import tideover.engine.site.Meter;
import tideover.engine.site.MeterRole;
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
            for (Circuit circuit : installation.circuits()) note(installation, circuit, meter, unseen);
            for (Inverter inverter : installation.inverters()) note(installation, inverter, meter, unseen);
            for (ThingId id : unseen)
                judging.at(id).by(limit.get()).notMet("measuring.coverage.unseen", name(id), name(meter.id()));
            if (unseen.isEmpty())
                judging.at(meter.id())
                        .by(limit.get())
                        .on(meter.fact("fedFrom"))
                        .met("measuring.coverage.all", name(meter.id()));
        }
    }

    private static void note(Installation installation, Fed fed, Meter meter, List<ThingId> unseen) {
        if (installation.gaps(fed).isEmpty() && !installation.isBehind(fed, meter.id())) unseen.add(fed.id());
    }
}
