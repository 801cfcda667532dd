package tideover.engine.starting;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.installation.Installation;
import tideover.engine.network.Demand;
import tideover.engine.site.Circuit;
import tideover.engine.site.FactId;
import tideover.engine.site.Inverter;
import tideover.engine.site.Load;

/** The facts that findings of starts rest on. */
final class StartFacts {

    private StartFacts() {}

    /** What a motor draws, as far as it is stated; the table stands for the rest. */
    static List<FactId> motor(Circuit circuit, Demand demand) {
        List<FactId> facts = new ArrayList<>(demand.facts(circuit));
        Load load = circuit.load();
        if (load == null) return facts;
        facts.add(circuit.fact("load.start"));
        if (load.startCurrentRatio() != null) facts.add(circuit.fact("load.startCurrentRatio"));
        if (load.startTimeS() != null) facts.add(circuit.fact("load.startTimeS"));
        return facts;
    }

    /** What the sources of a group give. */
    static List<FactId> sources(SourceGroup group, Installation installation) {
        List<FactId> facts = new ArrayList<>(2);
        for (Inverter inverter : installation.inverters())
            if (group.sources().contains(inverter.id())) {
                facts.add(inverter.fact("lineCurrentA"));
                facts.add(inverter.fact("overload"));
            }
        return facts;
    }
}
