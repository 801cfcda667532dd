package tideover.files.first;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import tideover.engine.site.NeutralRule;
import tideover.engine.site.SupplyLines;
import tideover.engine.site.ThingKind;
import tideover.files.first.FirstAnswers.SourceIs;
import tideover.files.tables.TypicalLoad;
import tideover.files.tables.TypicalValues;
import tideover.files.tables.TypicalValues.Made;

/**
 * What may become of the house. Where most circuits stay on, the board goes behind the islanding switch and the others move
 * to a board on the grid side; where few do, or on one line only, they move to a board of their own.
 */
final class FirstPlan {
    private static final String SWITCH = "islanding-switch";
    private static final String BACKUP_FUSE = "backup-fuse";
    private static final String SYSTEM_METER = "system-meter";
    private static final String RATIO = "selectivityRatio";

    private final FirstAnswers answers;
    private final FirstHouse house;
    private final TypicalValues typical;
    private final UnaryOperator<String> names;
    private final NeutralRule neutral;
    private final boolean oneLine;
    private final boolean ownBoard;
    private final List<TypicalLoad> staying = new ArrayList<>();
    private final List<TypicalLoad> leaving = new ArrayList<>();
    private final List<String> isolated = new ArrayList<>();
    private final List<String> noticed = new ArrayList<>(List.of("supply", "meter", FirstHouse.MAIN_BOARD));

    /** @param neutral what the rule book demands of it; MAY where it does not say */
    FirstPlan(
            FirstAnswers answers,
            FirstHouse house,
            NeutralRule neutral,
            TypicalValues typical,
            UnaryOperator<String> names) {
        this.answers = answers;
        this.neutral = neutral;
        this.house = house;
        this.typical = typical;
        this.names = names;
        this.oneLine = FirstSite.isOneLine(answers);
        for (TypicalLoad load : house.loads()) {
            boolean wanted = answers.staysOn().contains(load.id());
            // On an island of one line nothing runs that needs three.
            boolean can = !oneLine || !house.isThreeLines(load);
            (wanted && can ? staying : leaving).add(load);
        }
        this.ownBoard = oneLine && house.supplyLines() == SupplyLines.THREE || staying.size() < leaving.size();
    }

    void addTo(Draft draft) {
        List<String> all = FirstSite.conductors(house.supplyLines(), answers);
        List<String> island = FirstSite.conductors(oneLine ? SupplyLines.ONE : SupplyLines.THREE, answers);
        double fuseA = backupFuseA();
        draft.add(
                Draft.PLAN,
                ThingKind.METER,
                named(SYSTEM_METER)
                        .with("fedFrom", "meter")
                        .assume("conductors", all)
                        .with("role", "SYSTEM")
                        .assume(typical.part(SYSTEM_METER)));
        draft.add(
                Draft.PLAN,
                ThingKind.PROTECTIVE_DEVICE,
                named(BACKUP_FUSE)
                        .with("fedFrom", ownBoard ? FirstHouse.MAIN_BOARD : SYSTEM_METER)
                        .assume("conductors", island)
                        .assume(without(typical.part(BACKUP_FUSE), RATIO))
                        .assume("protection.ratedCurrentA", fuseA));
        draft.add(
                Draft.PLAN,
                ThingKind.ISLANDING_SWITCH,
                named(SWITCH)
                        .with("fedFrom", BACKUP_FUSE)
                        .assume("conductors", island)
                        .assume(typical.part(SWITCH))
                        .assume("cable.crossSectionMm2", typical.crossSectionMm2(fuseA))
                        .assume("poles", poles())
                        .assume("ratedCurrentA", typical.ratedCurrentFromA(Made.ISLANDING_SWITCH, fuseA)));
        if (neutral != NeutralRule.MUST_NOT)
            draft.add(
                    Draft.PLAN,
                    ThingKind.NEUTRAL_EARTH_SWITCH,
                    named("neutral-earth-switch").with("neutralAt", SWITCH).with("earthAt", "main-earth"));
        draft.add(
                Draft.PLAN,
                ThingKind.BY_PASS,
                named("by-pass")
                        .with("fedFrom", BACKUP_FUSE)
                        .with("leadsTo", SWITCH)
                        .assume(typical.part("by-pass"))
                        .assume("poles", poles()));
        String board = ownBoard ? islandBoard(draft, island, fuseA) : gridBoard(draft, all);
        if (answers.source() == SourceIs.TO_BE_PLANNED)
            FirstSite.addSource(answers, Draft.PLAN, board, typical, names, draft);
        else if (ownBoard) draft.add(Draft.PLAN, ThingKind.INVERTER, new Part("inverter").with("fedFrom", board));
        addIsolatorsAndNotices(draft);
    }

    /** All lines, and the neutral where it may be separated. */
    private int poles() {
        return (oneLine ? 1 : 3) + (neutral == NeutralRule.MUST_NOT ? 0 : 1);
    }

    /** The largest that the main fuse still lets blow first; the smallest there is where nobody knows the main fuse. */
    private double backupFuseA() {
        Double mainFuseA = answers.mainFuseA();
        double ratio = Double.parseDouble(typical.part(BACKUP_FUSE).getOrDefault(RATIO, "1.6"));
        return typical.ratedCurrentUpToA(Made.FUSE, (mainFuseA == null ? USUAL_MAIN_FUSE_A : mainFuseA) / ratio);
    }

    /** What the main fuse is taken for until somebody has looked [A]. */
    private static final double USUAL_MAIN_FUSE_A = 63;

    /** Circuits that stay on move to a board of their own behind the switch. */
    private String islandBoard(Draft draft, List<String> conductors, double fuseA) {
        String board = "island-board";
        noticed.add(board);
        draft.add(Draft.PLAN, ThingKind.BOARD, new Part(FirstHouse.MAIN_BOARD).with("fedFrom", SYSTEM_METER));
        draft.add(
                Draft.PLAN,
                ThingKind.BOARD,
                named(board)
                        .with("fedFrom", SWITCH)
                        .assume("conductors", conductors)
                        .assume(typical.part("grid-board"))
                        .assume("cable.crossSectionMm2", typical.crossSectionMm2(fuseA)));
        move(staying, board, "rcd-island", conductors, draft);
        return board;
    }

    /** The board goes behind the switch; circuits that are grid-only move to one before it. */
    private String gridBoard(Draft draft, List<String> conductors) {
        draft.add(Draft.PLAN, ThingKind.BOARD, new Part(FirstHouse.MAIN_BOARD).with("fedFrom", SWITCH));
        if (leaving.isEmpty()) return FirstHouse.MAIN_BOARD;
        String board = "grid-board";
        noticed.add(board);
        Part part = named(board)
                .with("fedFrom", SYSTEM_METER)
                .assume("conductors", conductors)
                .assume(typical.part(board));
        if (answers.mainFuseA() != null)
            part.assume("cable.crossSectionMm2", typical.crossSectionMm2(answers.mainFuseA()));
        draft.add(Draft.PLAN, ThingKind.BOARD, part);
        move(leaving, board, "rcd-grid", conductors, draft);
        return FirstHouse.MAIN_BOARD;
    }

    private void move(List<TypicalLoad> loads, String board, String group, List<String> conductors, Draft draft) {
        boolean pen = conductors.contains("PEN");
        if (!pen && loads.stream().anyMatch(load -> load.ownRcd() == null))
            draft.add(Draft.PLAN, ThingKind.RCD_GROUP, house.group(group, names.apply(group), board, conductors));
        for (TypicalLoad load : loads) {
            Part moved = new Part(load.id()).with("fedFrom", pen || load.ownRcd() != null ? board : group);
            // An island of one line has that line only.
            if (ownBoard && oneLine && !house.conductors(load).contains("L1"))
                moved.with("conductors", FirstSite.conductors(SupplyLines.ONE, answers));
            draft.add(Draft.PLAN, ThingKind.CIRCUIT, moved);
        }
    }

    private void addIsolatorsAndNotices(Draft draft) {
        isolated.addAll(List.of("supply", "inverter", "battery"));
        if (answers.peakPowerW() != null) isolated.add("pv");
        for (String source : isolated) {
            String id = "isolator-" + source;
            noticed.add(id);
            draft.add(
                    Draft.PLAN,
                    ThingKind.ISOLATOR,
                    named(id).with("isolates", source).decide(typical.part("isolator")));
        }
        for (String place : noticed)
            draft.add(
                    Draft.PLAN,
                    ThingKind.NOTICE,
                    new Part("notice-" + place)
                            .with("designation", names.apply("notice"))
                            .with("at", place));
    }

    private static Map<String, String> without(Map<String, String> values, String key) {
        Map<String, String> rest = new LinkedHashMap<>(values);
        rest.remove(key);
        return rest;
    }

    private Part named(String id) {
        return new Part(id).with("designation", names.apply(id));
    }
}
