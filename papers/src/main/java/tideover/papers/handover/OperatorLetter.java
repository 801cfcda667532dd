package tideover.papers.handover;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import tideover.engine.assessment.Assessment;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Stance;
import tideover.engine.rules.Topic;
import tideover.engine.rules.Unit;
import tideover.engine.site.Battery;
import tideover.engine.site.FactId;
import tideover.engine.site.GridOperator;
import tideover.engine.site.Inverter;
import tideover.engine.site.IslandingSwitch;
import tideover.engine.site.NeutralEarthSwitch;
import tideover.engine.site.NeutralRule;
import tideover.engine.site.PvArray;
import tideover.engine.site.Supply;
import tideover.engine.site.ThingId;
import tideover.papers.Stamp;
import tideover.papers.Wording;

/** The letter with the questions that only the grid operator can answer, to be answered on its back half. */
public final class OperatorLetter {

    private static final String NEUTRAL = "neutralSeparation";

    /** What the template shows. */
    record Content(
            String site,
            String date,
            String revision,
            String operator,
            String title,
            String intro,
            List<Line> plan,
            String asked,
            List<Question> questions,
            List<String> conditions) {}

    /** A part of what is planned. */
    record Line(String what, String is) {}

    /** @param choices answers to tick; none where a value is to be written */
    record Question(String number, String text, String why, List<String> choices) {}

    private final Assessment assessment;
    private final Installation installation;
    private final Wording wording;
    private final Stamp stamp;
    private final List<FactId> asked;

    private OperatorLetter(Assessment assessment, Wording wording, Stamp stamp) {
        this.assessment = assessment;
        this.installation = assessment.installation();
        this.wording = wording.with(installation);
        this.stamp = stamp;
        this.asked = new Questions(assessment, this.wording).ofOperator();
    }

    /** The letter for an assessment; where nothing is to be asked, it says what is planned. */
    public static OperatorLetter of(Assessment assessment, Wording wording, Stamp stamp) {
        return new OperatorLetter(assessment, wording, stamp);
    }

    /** Whether a finding waits for the grid operator. */
    public boolean asks() {
        return !asked.isEmpty();
    }

    /** The paper as PDF; the same assessment and stamp give the same bytes. */
    public byte[] pdf() {
        String title = wording.text("letter.of", wording.name(ThingId.PLACE));
        return new Press(wording.locale(), title, stamp)
                .print(body(), List.of(new Press.Bookmark(title, "letter")), pdf -> {});
    }

    /** What stands on its page. */
    String body() {
        GridOperator operator = installation.site().house().gridOperator();
        return Template.in("letter.xhtml")
                .fill(
                        new Content(
                                wording.capitalised(wording.name(ThingId.PLACE)),
                                stamp.date().toString(),
                                stamp.revision().shortened(),
                                wording.capitalised(wording.name(ThingId.GRID_OPERATOR)),
                                wording.text(asks() ? "letter.title" : "letter.title.files"),
                                wording.text("letter.intro", wording.name(ThingId.PLACE)),
                                plan(),
                                wording.text(
                                        asks() ? "letter.asked" : "letter.nothing",
                                        PhraseArg.count(
                                                assessment.verdict().counts().getOrDefault(Outcome.OPEN, 0))),
                                questions(),
                                declared(operator)),
                        wording);
    }

    private List<String> declared(GridOperator operator) {
        List<String> declared = new ArrayList<>();
        if (operator.neutralSeparation() != null)
            declared.add(wording.text("letter.answered", wording.word(operator.neutralSeparation())));
        if (operator.conditions() != null) declared.addAll(operator.conditions());
        return declared;
    }

    private List<Line> plan() {
        List<Line> plan = new ArrayList<>();
        Supply supply = installation.supply();
        add(
                plan,
                "supply",
                supply.earthingSystem() == null ? null : wording.word(supply.earthingSystem()),
                supply.lines() == null ? null : wording.word(supply.lines()),
                supply.mainFuse() == null
                        ? null
                        : part("letter.mainFuse", supply.mainFuse().ratedCurrentA(), Unit.A));
        for (IslandingSwitch device : installation.islandingSwitches())
            add(
                    plan,
                    "switch",
                    wording.name(device.id()),
                    device.kind() == null ? null : wording.word(device.kind()),
                    device.poles() == null ? null : wording.text("diagram.poles", PhraseArg.count(device.poles())),
                    part("letter.rated", device.ratedCurrentA(), Unit.A),
                    device.feedbackContact() == null ? null : wording.word(device.feedbackContact()));
        for (NeutralEarthSwitch device : installation.neutralEarthSwitches())
            add(plan, "neutralEarth", wording.name(device.id()));
        for (Inverter inverter : installation.inverters())
            add(
                    plan,
                    "inverter",
                    wording.name(inverter.id()),
                    inverter.role() == null ? null : wording.word(inverter.role()),
                    part("letter.rated", inverter.ratedPowerVa(), Unit.VA),
                    part("letter.feedIn", inverter.feedInPowerW(), Unit.W));
        for (Battery battery : installation.all(Battery.class))
            add(
                    plan,
                    "battery",
                    wording.name(battery.id()),
                    part("letter.usable", battery.usableEnergyWh(), Unit.WH),
                    part("letter.discharge", battery.dischargePowerW(), Unit.W));
        for (PvArray array : installation.all(PvArray.class))
            add(plan, "pv", wording.name(array.id()), part("diagram.peak", array.peakPowerW(), Unit.W));
        return plan;
    }

    private void add(List<Line> plan, String what, @Nullable String... parts) {
        List<String> known = new ArrayList<>();
        for (String part : parts) if (part != null) known.add(part);
        plan.add(new Line(wording.text("letter.plan." + what), String.join(", ", known)));
    }

    private @Nullable String part(String key, @Nullable Double value, Unit unit) {
        return value == null ? null : wording.text(key, PhraseArg.amount(value, unit));
    }

    private List<Question> questions() {
        List<Question> questions = new ArrayList<>();
        for (FactId fact : asked) questions.add(question(questions.size() + 1, fact));
        List<String> topics = new ArrayList<>();
        for (Topic topic : Topic.values())
            if (assessment.rules().stance(topic) == Stance.ASK_OPERATOR) topics.add(wording.word(topic));
        if (asks() && !topics.isEmpty())
            questions.add(new Question(
                    questions.size() + 1 + ".",
                    wording.text("letter.conditions", wording.joined(topics)),
                    wording.text("letter.conditions.why"),
                    List.of()));
        return questions;
    }

    private Question question(int number, FactId fact) {
        if (!fact.equals(new FactId(ThingId.GRID_OPERATOR, NEUTRAL)))
            return new Question(
                    number + ".",
                    wording.text("letter.fact", wording.fact(fact)),
                    wording.text("letter.fact.why"),
                    List.of());
        List<String> choices = new ArrayList<>();
        for (NeutralRule rule : NeutralRule.values()) choices.add(wording.text("letter.neutral." + rule.name()));
        return new Question(number + ".", wording.text("letter.neutral"), wording.text("letter.neutral.why"), choices);
    }
}
