package tideover.files.first;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.UnaryOperator;
import tideover.engine.site.EarthingSystem;
import tideover.engine.site.NeutralRule;
import tideover.engine.site.Origin;
import tideover.engine.site.SupplyLines;
import tideover.engine.site.ThingKind;
import tideover.files.FieldTable;
import tideover.files.SiteFileResult;
import tideover.files.SiteFiles;
import tideover.files.rules.RuleBookResult;
import tideover.files.rules.RuleBooks;
import tideover.files.tables.TypicalLoad;
import tideover.files.tables.TypicalLoad.Habit;
import tideover.files.tables.TypicalValues;
import tideover.files.tables.TypicalValues.Made;

/** Makes a first picture of a house. Safe to share between threads. */
public final class FirstSite {
    /** Line to neutral, r.m.s.: the default of the field table [V]. */
    static final double NOMINAL_VOLTAGE_V = 230;

    private final SiteFiles siteFiles;
    private final TypicalValues typical;
    private final UnaryOperator<String> names;

    /** @param names what a part or load is called on paper, such as {@code main-board} or {@code kitchen-sockets} */
    public FirstSite(FieldTable fields, TypicalValues typical, UnaryOperator<String> names) {
        this.siteFiles = new SiteFiles(fields);
        this.typical = typical;
        this.names = names;
    }

    /** The house and what may become of it; refused where an answer cannot stand in a site. */
    public SiteFileResult of(FirstAnswers answers) {
        Draft draft = new Draft();
        FirstHouse house = new FirstHouse(answers, typical, names);
        house.addTo(draft);
        new FirstPlan(answers, house, neutral(answers), typical, names).addTo(draft);
        evidence(answers, house, draft);
        return siteFiles.read("", draft.json().getBytes(StandardCharsets.UTF_8));
    }

    /** What the country's rule book says of the neutral at this earthing system. */
    private static NeutralRule neutral(FirstAnswers answers) {
        // A PEN is never switched.
        if (answers.earthing() == EarthingSystem.TN_C) return NeutralRule.MUST_NOT;
        if (answers.earthing() == null
                || !(RuleBooks.read(answers.country(), List.of()) instanceof RuleBookResult.Readable book))
            return NeutralRule.MAY;
        return book.rules()
                .find("poles.neutral." + answers.earthing())
                .filter(limit -> limit.is(NeutralRule.MUST_NOT))
                .map(limit -> NeutralRule.MUST_NOT)
                .orElse(NeutralRule.MAY);
    }

    private static void evidence(FirstAnswers answers, FirstHouse house, Draft draft) {
        Origin origin = answers.origin();
        draft.said("place.designation", origin);
        if (!answers.country().isEmpty()) draft.said("place.country", origin);
        if (answers.earthing() != null) draft.said("supply.earthingSystem", origin);
        if (answers.lines() != null) draft.said("supply.lines", origin);
        if (answers.mainFuseA() != null) draft.said("supply.mainFuse.ratedCurrentA", origin);
        for (TypicalLoad load : house.loads()) {
            // What most houses have was suggested, and may have been left as it was without a look.
            if (load.usual() == Habit.YES) continue;
            draft.said(load.id() + ".load.kind", origin);
            // What must run is the customer's wish, whoever writes it down.
            if (answers.staysOn().contains(load.id())) draft.said(load.id() + ".stayOn", Origin.DECLARED_BY_CUSTOMER);
        }
        if (answers.source() == FirstAnswers.SourceIs.TO_BE_PLANNED) return;
        if (answers.ratedPowerVa() != null) draft.said("inverter.ratedPowerVa", origin);
        if (answers.usableEnergyWh() != null) draft.said("battery.usableEnergyWh", origin);
        if (answers.peakPowerW() != null) draft.said("pv.peakPowerW", origin);
    }

    /** Whether nothing but one line can stay on. */
    static boolean isOneLine(FirstAnswers answers) {
        return answers.forms() == SupplyLines.ONE || answers.lines() == SupplyLines.ONE;
    }

    /** Conductors of a cable in the house. */
    static List<String> conductors(SupplyLines lines, FirstAnswers answers) {
        boolean pen = answers.earthing() == EarthingSystem.TN_C;
        if (lines == SupplyLines.ONE) return pen ? List.of("L1", "PEN") : List.of("L1", "N", "PE");
        return pen ? List.of("L1", "L2", "L3", "PEN") : List.of("L1", "L2", "L3", "N", "PE");
    }

    /** What feeds the island, as far as it was said. */
    static void addSource(
            FirstAnswers answers,
            String side,
            String feeder,
            TypicalValues typical,
            UnaryOperator<String> names,
            Draft draft) {
        SupplyLines lines = isOneLine(answers) ? SupplyLines.ONE : SupplyLines.THREE;
        Part inverter = new Part("inverter")
                .with("designation", names.apply("inverter"))
                .with("fedFrom", feeder)
                .assume("conductors", conductors(lines, answers))
                .assume(typical.part("inverter"));
        Double powerVa = answers.ratedPowerVa();
        if (powerVa != null) {
            double lineA = powerVa / NOMINAL_VOLTAGE_V / (lines == SupplyLines.ONE ? 1 : 3);
            double breakerA = typical.ratedCurrentFromA(Made.BREAKER, lineA);
            inverter.assume("cable.crossSectionMm2", typical.crossSectionMm2(breakerA))
                    .assume("protection.ratedCurrentA", breakerA)
                    .with("ratedPowerVa", powerVa)
                    .assume("lineCurrentA", Math.round(lineA * 10) / 10.0)
                    .assume("feedInPowerW", powerVa);
        }
        // Over two electrodes no breaker clears a fault in that cable; which type of RCD does, its maker has to say.
        if (answers.earthing() == EarthingSystem.TT) inverter.assume(typical.part("inverter-rcd"));
        inverter.assume("role", "GRID_FORMING");
        draft.add(side, ThingKind.INVERTER, inverter);
        draft.add(
                side,
                ThingKind.BATTERY,
                new Part("battery")
                        .with("designation", names.apply("battery"))
                        .with("inverters", List.of("inverter"))
                        .with("usableEnergyWh", answers.usableEnergyWh()));
        if (answers.peakPowerW() != null)
            draft.add(
                    side,
                    ThingKind.PV_ARRAY,
                    new Part("pv")
                            .with("designation", names.apply("pv"))
                            .with("inverter", "inverter")
                            .with("peakPowerW", answers.peakPowerW()));
    }
}
