package tideover.papers;

import static tideover.engine.rules.PhraseArg.amount;
import static tideover.engine.rules.PhraseArg.count;
import static tideover.engine.rules.PhraseArg.name;
import static tideover.engine.rules.PhraseArg.names;
import static tideover.engine.rules.PhraseArg.verbatim;
import static tideover.engine.rules.PhraseArg.word;

import java.util.ArrayList;
import java.util.List;
import tideover.engine.installation.Installation;
import tideover.engine.protection.Clearing;
import tideover.engine.protection.DeviceBand;
import tideover.engine.protection.FaultCourse;
import tideover.engine.protection.FaultKind;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Unit;
import tideover.engine.site.ThingId;

/** Tells faults as stories: the same on command line and paper. */
public final class FaultWording {

    /** Less is nothing anyone would notice [A], [V]. */
    private static final double NOTICEABLE_A = 0.05;

    private static final double NOTICEABLE_V = 1;

    /** More circuits than this are counted, not named. */
    private static final int NAMED = 5;

    private final Wording wording;

    public FaultWording(Wording wording, Installation installation) {
        this.wording = wording.with(installation);
    }

    /** The whole story: what flows, what ends it and when, what is left, what goes dark. */
    public String story(FaultCourse course) {
        List<String> said = new ArrayList<>();
        said.add(flows(course));
        if (course.currentA() > 0) {
            said.add(end(course.clearing()));
            others(course, said);
            if (course.kind() == FaultKind.LINE_TO_EARTH && course.touchVoltageV() >= NOTICEABLE_V)
                said.add(wording.text("network.fault.touch", amount(course.touchVoltageV(), Unit.V)));
            ways(course, said);
            dark(course, said);
        }
        return String.join(" ", said);
    }

    /** Between what, in short: L1–PE. */
    public String between(FaultCourse course) {
        return wording.text("network.between." + course.kind().name(), verbatim(lines(course)));
    }

    /** When it ends at the latest, for certain. */
    public String latest(Clearing clearing) {
        return clearing instanceof Clearing.Unknown
                ? wording.text("network.ends.unknown")
                : wording.amount(clearing.latestS(), Unit.S);
    }

    /** What ends it, in short; empty where nothing does for certain. */
    public String endedBy(Clearing clearing) {
        if (clearing instanceof Clearing.ByDevice by)
            return wording.text("network.ends." + by.kind().name(), name(by.device()));
        return clearing instanceof Clearing.BySourceShutdown by ? wording.name(by.source()) : "";
    }

    /** When and by what it ends at the latest, in short. */
    public String ends(Clearing clearing) {
        String by = endedBy(clearing);
        return by.isEmpty() ? latest(clearing) : wording.text("network.ends", latest(clearing), by);
    }

    private String lines(FaultCourse course) {
        return String.join("–", course.lines().stream().map(wording::word).toList());
    }

    private String flows(FaultCourse course) {
        String head = wording.text(
                "network.fault." + course.kind().name(),
                verbatim(lines(course)),
                name(course.place()),
                word(course.extreme()));
        if (course.currentA() == 0) return wording.text("network.fault.nothing", head);
        // IEC 60909-0 adds what inverters give to the largest current of the grid.
        boolean added = course.answer() == FaultCourse.SourceAnswer.IN_FULL
                && course.currentA() - course.sourceA().largest() >= NOTICEABLE_A;
        return wording.text(
                "network.fault." + course.answer().name() + (added ? ".added" : ""),
                verbatim(head),
                amount(course.currentA(), Unit.A),
                name(course.source()),
                amount(course.voltageLeftV() < NOTICEABLE_V ? 0 : course.voltageLeftV(), Unit.V));
    }

    private String end(Clearing clearing) {
        if (clearing instanceof Clearing.ByDevice by) {
            String key =
                    by.device().equals(ThingId.SUPPLY) ? "mainFuse" : by.kind().name();
            return wording.text(
                    "network.fault." + key + (by.earliestS() > 0 ? "" : ".within"),
                    name(by.device()),
                    amount(by.earliestS(), Unit.S),
                    amount(by.latestS(), Unit.S));
        }
        if (clearing instanceof Clearing.BySourceShutdown by)
            return wording.text(
                    "network.fault.shutdown",
                    name(by.source()),
                    amount(by.latestS(), Unit.S),
                    amount(by.voltageLeftV(), Unit.V));
        if (clearing instanceof Clearing.Unknown unknown) {
            List<String> facts = unknown.facts().stream().map(wording::fact).toList();
            return wording.text("network.fault.unknown", wording.joined(facts));
        }
        return wording.text("network.fault.never");
    }

    /** Devices that might be quicker than the one that is certain. */
    private void others(FaultCourse course, List<String> said) {
        double endsS = course.clearing().latestS();
        List<ThingId> others = new ArrayList<>();
        for (DeviceBand band : course.bands()) {
            boolean isTheOne = course.clearing() instanceof Clearing.ByDevice by
                    && by.device().equals(band.device());
            if (!isTheOne && band.earliestS() < endsS && !others.contains(band.device())) others.add(band.device());
        }
        if (!others.isEmpty()) said.add(wording.text("network.fault.others", count(others.size()), names(others)));
    }

    private void ways(FaultCourse course, List<String> said) {
        List<String> ways = new ArrayList<>();
        addWay("protective", course.protectiveA(), ways);
        addWay("link", course.linkA(), ways);
        addWay("earth", course.earthA(), ways);
        if (!ways.isEmpty()) said.add(wording.text("network.fault.ways", wording.joined(ways)));
    }

    private void addWay(String key, double currentA, List<String> ways) {
        if (currentA >= NOTICEABLE_A) ways.add(wording.text("network.fault.way." + key, amount(currentA, Unit.A)));
    }

    private void dark(FaultCourse course, List<String> said) {
        int circuits = course.dark().size();
        if (circuits == 0) return;
        PhraseArg number = count(circuits);
        said.add(
                circuits > NAMED
                        ? wording.text("network.fault.dark.many", number)
                        : wording.text("network.fault.dark", number, names(course.dark())));
    }
}
