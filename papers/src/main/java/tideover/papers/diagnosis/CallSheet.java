package tideover.papers.diagnosis;

import java.util.List;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Unit;
import tideover.engine.site.Battery;
import tideover.engine.site.IslandSettings;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;
import tideover.engine.wiring.model.Timing;
import tideover.papers.Wording;
import tideover.papers.diagnosis.CallNode.Caution;
import tideover.papers.wiring.WiringModel;

/** Words a tree with the names, limits and expected readings of a house. */
public final class CallSheet {

    private final Wording wording;
    private final CallFacts facts;
    private final String[] names;

    public CallSheet(WiringModel model) {
        this.wording = model.words().words();
        this.facts = new CallFacts(model);
        Installation installation = model.house().installation();
        Timing timing = model.house().timing();
        ThingId gridMeter =
                model.house().findSettings().map(IslandSettings::gridMeter).orElse(null);
        this.names = new String[] {
            model.house()
                    .findLeader()
                    .map(inverter -> wording.name(inverter.id()))
                    .orElse("–"),
            names(installation.islandingSwitches(), "call.noSwitch"),
            names(installation.neutralEarthSwitches(), "call.noLink"),
            names(installation.all(Battery.class), "call.noBattery"),
            wording.amount(timing.observationTimeS(), Unit.S),
            wording.amount(timing.feedbackTimeS(), Unit.S),
            gridMeter == null ? wording.text("call.gridInput") : wording.name(gridMeter)
        };
    }

    private String names(List<? extends Thing> things, String otherwise) {
        return things.isEmpty()
                ? wording.text(otherwise)
                : wording.names(things.stream().map(Thing::id).toList());
    }

    /** What the caller has. */
    public String title(String trouble) {
        return wording.text("call." + trouble + ".title");
    }

    /** The question, or what to read and do. */
    public String text(CallNode node) {
        return wording.capitalised(wording.text("call." + node.id(), names));
    }

    /** What to heed before; empty where the hand goes nowhere. */
    public String caution(CallNode node) {
        return node.caution() == Caution.LOOK
                ? ""
                : wording.text("call.caution." + node.caution().name());
    }

    /** What a fact is called. */
    public String name(CallFact fact) {
        return wording.heading(fact);
    }

    /** That a fact stands above already. */
    String asAbove(CallFact fact) {
        return wording.text("call.asAbove", name(fact));
    }

    /** A fact of the house, line by line. */
    public List<String> facts(CallFact fact) {
        return facts.of(fact);
    }

    /** The word for an answer. */
    public String answer(Answer answer) {
        return wording.text(answer == Answer.YES ? "call.yes" : "call.no");
    }

    /** An answer to a question. */
    public enum Answer {
        YES,
        NO
    }
}
