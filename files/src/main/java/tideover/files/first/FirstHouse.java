package tideover.files.first;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.Importance;
import tideover.engine.site.StartKind;
import tideover.engine.site.StayOn;
import tideover.engine.site.SupplyLines;
import tideover.engine.site.ThingKind;
import tideover.files.first.FirstAnswers.SourceIs;
import tideover.files.tables.TypicalLoad;
import tideover.files.tables.TypicalValues;
import tideover.files.tables.TypicalValues.Made;

/** The house as it may have been found: one board behind one meter, RCDs of a few circuits each. */
final class FirstHouse {
    static final String MAIN_BOARD = "main-board";
    /** What tells how many circuits lie behind one RCD; no fact of it. */
    private static final String CIRCUITS = "circuits";

    private final FirstAnswers answers;
    private final TypicalValues typical;
    private final UnaryOperator<String> names;
    private final List<TypicalLoad> loads;
    private final Map<String, Integer> lines = new LinkedHashMap<>();

    FirstHouse(FirstAnswers answers, TypicalValues typical, UnaryOperator<String> names) {
        this.answers = answers;
        this.typical = typical;
        this.names = names;
        this.loads = typical.loads().stream()
                .filter(load ->
                        answers.loads().contains(load.id()) || answers.staysOn().contains(load.id()))
                .toList();
        int next = 0;
        for (TypicalLoad load : loads) if (!isThreeLines(load)) lines.put(load.id(), next++ % 3);
    }

    /** The loads there are. */
    List<TypicalLoad> loads() {
        return loads;
    }

    /** How many lines come into the house, as far as one may assume. */
    SupplyLines supplyLines() {
        return answers.lines() == null ? SupplyLines.THREE : answers.lines();
    }

    boolean isThreeLines(TypicalLoad load) {
        return load.lines() == SupplyLines.THREE && supplyLines() == SupplyLines.THREE;
    }

    /** Conductors of a circuit: those on one line are spread over all there are. */
    List<String> conductors(TypicalLoad load) {
        if (isThreeLines(load)) return FirstSite.conductors(SupplyLines.THREE, answers);
        List<String> conductors = new ArrayList<>(FirstSite.conductors(SupplyLines.ONE, answers));
        if (supplyLines() == SupplyLines.THREE) conductors.set(0, "L" + (lines.getOrDefault(load.id(), 0) + 1));
        return conductors;
    }

    void addTo(Draft draft) {
        List<String> feeders = FirstSite.conductors(supplyLines(), answers);
        draft.add(
                "place",
                new Part("")
                        .with("designation", answers.designation())
                        .with("country", answers.country().isEmpty() ? null : answers.country()));
        draft.add(
                "supply",
                new Part("")
                        .with("earthingSystem", answers.earthing())
                        .with("lines", answers.lines())
                        .assume(typical.part("supply"))
                        .with("mainFuse.ratedCurrentA", answers.mainFuseA()));
        draft.add(
                Draft.HOUSE,
                ThingKind.METER,
                named("meter")
                        .assume("fedFrom", "supply")
                        .assume("conductors", feeders)
                        .assume("role", "OPERATOR")
                        .assume(typical.part("meter")));
        draft.add(Draft.HOUSE, ThingKind.ELECTRODE, named("earth-electrode").assume(typical.part("electrode")));
        Part board = named(MAIN_BOARD)
                .assume("fedFrom", "meter")
                .assume("conductors", feeders)
                .assume(typical.part(MAIN_BOARD));
        if (answers.mainFuseA() != null)
            board.assume("cable.crossSectionMm2", typical.crossSectionMm2(answers.mainFuseA()));
        draft.add(Draft.HOUSE, ThingKind.BOARD, board);
        addCircuits(draft, feeders);
        if (answers.source() == SourceIs.THERE)
            FirstSite.addSource(answers, Draft.HOUSE, MAIN_BOARD, typical, names, draft);
    }

    private void addCircuits(Draft draft, List<String> feeders) {
        int most = Integer.parseInt(typical.part("rcd-group").getOrDefault(CIRCUITS, "6"));
        int groups = 0;
        int inGroup = most;
        for (TypicalLoad load : loads) {
            String feeder = MAIN_BOARD;
            // Behind a PEN no RCD works.
            if (load.ownRcd() == null && answers.earthing() != EarthingSystem.TN_C) {
                if (inGroup == most) {
                    groups++;
                    inGroup = 0;
                    String name = names.apply("rcd-group") + " " + groups;
                    draft.add(Draft.HOUSE, ThingKind.RCD_GROUP, group("rcd-" + groups, name, MAIN_BOARD, feeders));
                }
                inGroup++;
                feeder = "rcd-" + groups;
            }
            draft.add(Draft.HOUSE, ThingKind.CIRCUIT, circuit(load, feeder));
        }
    }

    /** RCDs are made for the currents of switches; one bears what the fuse before it lets through. */
    Part group(String id, String name, String feeder, List<String> conductors) {
        Map<String, String> values = new LinkedHashMap<>(typical.part("rcd-group"));
        values.remove(CIRCUITS);
        Part group = new Part(id)
                .with("designation", name)
                .with("fedFrom", feeder)
                .assume("conductors", conductors)
                .assume(values);
        Double fuseA = answers.mainFuseA();
        return fuseA == null
                ? group
                : group.with("rcd.ratedCurrentA", typical.ratedCurrentFromA(Made.ISLANDING_SWITCH, fuseA));
    }

    private Part circuit(TypicalLoad load, String feeder) {
        boolean must = answers.staysOn().contains(load.id());
        // What is made for three lines takes all of its current from the one there is.
        boolean crowded = load.lines() == SupplyLines.THREE && !isThreeLines(load);
        double breakerA = crowded
                ? typical.ratedCurrentFromA(Made.BREAKER, load.powerW() / FirstSite.NOMINAL_VOLTAGE_V)
                : load.ratedCurrentA();
        Part circuit = named(load.id())
                .assume("fedFrom", feeder)
                .assume("conductors", conductors(load))
                .assume("cable.lengthM", load.lengthM())
                .assume("cable.crossSectionMm2", crowded ? typical.crossSectionMm2(breakerA) : load.crossSectionMm2())
                .assume(typical.part("circuit"))
                .assume("protection.curve", load.curve())
                .assume("protection.ratedCurrentA", breakerA);
        if (load.ownRcd() != null) circuit.assume("rcd.type", load.ownRcd()).assume(typical.part("own-rcd"));
        circuit.with("load.kind", load.kind())
                .assume("load.powerW", load.powerW())
                .with("load.converter", load.converter())
                .assume("load.start", load.start());
        if (load.start() != StartKind.NONE)
            circuit.with("load.startCurrentRatio", load.startCurrentRatio()).with("load.startTimeS", load.startTimeS());
        return circuit.assume("importance", must ? Importance.MUST_RUN : load.importance())
                .with("stayOn", must ? StayOn.MUST : StayOn.MAY);
    }

    private Part named(String id) {
        return new Part(id).with("designation", names.apply(id));
    }
}
