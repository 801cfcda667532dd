package tideover.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tideover.engine.installation.Installation;
import tideover.engine.rules.Finding;
import tideover.engine.rules.FindingKey;
import tideover.engine.rules.Force;
import tideover.engine.rules.Missing;
import tideover.engine.rules.Outcome;
import tideover.engine.rules.Phrase;
import tideover.engine.rules.PhraseArg;
import tideover.engine.rules.Source;
import tideover.engine.rules.Unit;
import tideover.engine.rules.Verification;
import tideover.engine.site.EarthPlace;
import tideover.engine.site.Electrode;
import tideover.engine.site.FactId;
import tideover.engine.site.FactSource;
import tideover.engine.site.FieldWords;
import tideover.engine.site.GridOperator;
import tideover.engine.site.House;
import tideover.engine.site.OperatingState;
import tideover.engine.site.Place;
import tideover.engine.site.Plan;
import tideover.engine.site.Site;
import tideover.engine.site.Supply;
import tideover.engine.site.Thing;
import tideover.engine.site.ThingId;

/** Sentences as a fitter would say them. */
class WordingTest {

    private static final FieldWords FIELDS = new FieldWords() {
        @Override
        public String words(String section, String field) {
            return Map.of("resistanceOhm", "resistance", "neutralSeparation", "separation of the neutral")
                    .get(field);
        }

        @Override
        public FactSource source(String section, String field) {
            return FactSource.MEASURE;
        }
    };

    private static final ThingId ROD = new ThingId("rod");
    private static final Wording WORDING = Wording.of(Locale.ENGLISH, FIELDS);

    private static Installation house(Thing... things) {
        Place place = new Place("Lindenweg 4", "DE", null, null, null, null);
        Supply supply = new Supply("Connection box", null, null, null, null, null, null, null, null);
        House house = new House(place, new GridOperator(null, null, null), supply, List.of(things));
        return Installation.of(new Site(house, new Plan(List.of(), List.of(), List.of()), List.of()));
    }

    private static Electrode rod(String id, String designation) {
        return new Electrode(new ThingId(id), designation, EarthPlace.MAIN_EARTH, null);
    }

    // The usage of the trade: three figures that count, mA for residual currents, k for thousands.
    @ParameterizedTest(name = "{0} {1} is written {2}")
    @CsvSource({
        "0.03, RESIDUAL_A, 30 mA",
        "0.006, RESIDUAL_A, 6 mA",
        "16, A, 16 A",
        "14.49, A, 14.5 A",
        "1650, A, 1.65 kA",
        "6000, A, 6 kA",
        "230, V, 230 V",
        "0.4, S, 0.4 s",
        "0.0123456, S, 0.0123 s",
        "3600, S, 1 h",
        "300, S, 5 min",
        "7400, W, 7.4 kW",
        "550, W, 550 W",
        "1.4375, OHM, 1.44 Ω",
        "0.2804, OHM, 0.28 Ω",
        "2.5, MM2, 2.5 mm²",
        "7.41, OHM_PER_KM, 7.41 Ω/km",
        "-3, DEG_C, −3 °C",
        "0, A, 0 A",
        "28, COUNT, 28",
        "1.45, RATIO, 1.45",
    })
    void amountsAreRoundedAsTheTradeWritesThem(double value, Unit unit, String expected) {
        assertThat(WORDING.amount(value, unit)).isEqualTo(expected);
    }

    @Test
    void infinityIsNeverForATimeAndWithoutLimitElse() {
        assertThat(WORDING.amount(Double.POSITIVE_INFINITY, Unit.S)).isEqualTo("never");
        assertThat(WORDING.amount(Double.POSITIVE_INFINITY, Unit.A)).isEqualTo("without limit");
    }

    @Test
    void theDecimalSignIsThatOfTheLanguage() {
        assertThat(Wording.of(Locale.GERMAN, FIELDS).amount(1.44, Unit.OHM)).isEqualTo("1,44 Ω");
    }

    @Test
    void aValueJustAboveItsLimitIsNotPrintedAsEqualToIt() {
        // To three figures both are 0.4 s.
        assertThat(WORDING.of(new Finding.Measure(0.40004, 0.4, Unit.S))).isEqualTo("0.40004 s against 0.4 s");
        assertThat(WORDING.of(new Finding.Measure(0.4, 0.4, Unit.S))).isEqualTo("0.4 s against 0.4 s");
    }

    @Test
    void thingsGoByTheirPrintedNameAndByTheirIdWhereItIsMissingOrShared() {
        Wording names = WORDING.with(
                house(rod("rod", "XE1 Rod"), rod("twin-a", "Plate"), rod("twin-b", "Plate"), rod("bare", null)));
        assertThat(names.name(ROD)).isEqualTo("XE1 Rod");
        assertThat(names.name(new ThingId("twin-a"))).isEqualTo("Plate (twin-a)");
        assertThat(names.name(new ThingId("bare"))).isEqualTo("bare");
        assertThat(names.name(ThingId.SUPPLY)).isEqualTo("Connection box");
        assertThat(names.name(ThingId.GRID_OPERATOR)).isEqualTo("the grid operator");
        assertThat(names.name(ThingId.MAIN_EARTH)).isEqualTo("the main earthing terminal");
    }

    @Test
    void severalNamesAreJoinedAsInASentence() {
        assertThat(WORDING.names(List.of(new ThingId("a"), new ThingId("b"), new ThingId("c"))))
                .isEqualTo("a, b and c");
        assertThat(WORDING.names(List.of(new ThingId("a"), new ThingId("b")))).isEqualTo("a and b");
        assertThat(WORDING.names(List.of(new ThingId("a")))).isEqualTo("a");
    }

    @Test
    void aFactIsNamedWithItsThing() {
        assertThat(WORDING.with(house(rod("rod", "XE1 Rod"))).fact(new FactId(ROD, "resistanceOhm")))
                .isEqualTo("resistance of XE1 Rod");
    }

    private static Finding open(Missing missing, String key) {
        return new Finding(
                new FindingKey("link.electrode", ROD, OperatingState.ISLAND_GRID_DEAD),
                Outcome.OPEN,
                Force.REQUIRED,
                null,
                null,
                null,
                List.of(),
                List.of(),
                List.of(missing),
                Phrase.of(key, PhraseArg.name(ROD), PhraseArg.amount(12, Unit.OHM)),
                null);
    }

    @Test
    void anOpenFindingSaysWhatItWaitsFor() {
        Wording names = WORDING.with(house(rod("rod", "XE1 Rod")));
        FactId resistance = new FactId(ROD, "resistanceOhm");
        assertThat(names.of(open(new Missing.UnknownFact(resistance), "open.facts")))
                .isEqualTo("Not known yet: resistance of XE1 Rod.");
        // Never 'met' on an assumption: what would be met is told, and what stands in the way.
        assertThat(names.of(open(new Missing.AssumedFact(resistance), "link.electrode.met")))
                .isEqualTo(
                        "The island stands on XE1 Rod, 12 Ω. Only assumed, so this stays open: resistance of XE1 Rod.");
        assertThat(names.of(open(
                        new Missing.OperatorAnswer(new FactId(ThingId.GRID_OPERATOR, "neutralSeparation")),
                        "open.operator")))
                .isEqualTo(
                        "The grid operator decides and has not answered: separation of the neutral of the grid operator.");
        assertThat(names.of(open(new Missing.UnknownLimit("rcd.touchVoltageV"), "open.limit")))
                .isEqualTo("The rule book says nothing of rcd.touchVoltageV.");
    }

    @Test
    void anOutcomeIsToldBySignAndWord() {
        assertThat(WORDING.outcome(Outcome.NOT_MET)).isEqualTo("✕ Not met");
        assertThat(WORDING.outcome(Outcome.OPEN)).isEqualTo("? Open");
        assertThat(Outcome.values()).extracting(WORDING::sign).doesNotHaveDuplicates();
    }

    @Test
    void aSourceTellsHowFarItWasCompared() {
        assertThat(WORDING.of(new Source("IEC 60364-4-41", "411.3.2", Verification.FROM_MEMORY)))
                .isEqualTo("IEC 60364-4-41, 411.3.2 · from memory");
        assertThat(WORDING.of(new Source("practice", "", Verification.COMMON_PRACTICE)))
                .isEqualTo("practice · common practice");
    }

    @Test
    void oneAndManyAreToldApart() {
        assertThat(WORDING.text("diagram.poles", PhraseArg.count(1))).isEqualTo("one pole");
        assertThat(WORDING.text("diagram.poles", PhraseArg.count(4))).isEqualTo("4 poles");
    }
}
