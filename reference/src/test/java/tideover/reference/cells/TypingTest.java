package tideover.reference.cells;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tideover.engine.site.ThingId;
import tideover.files.Edit;
import tideover.files.Field;
import tideover.files.FieldKind;
import tideover.files.FieldTable;
import tideover.files.cells.Typed;
import tideover.files.cells.Typing;
import tideover.files.text.Numbers;
import tideover.papers.Wording;

/** What electricians type into cells, in their language, and what stands there afterwards. */
class TypingTest {

    private static final FieldTable TABLE = FieldTable.load();
    private static final Wording WORDING = Wording.of(Locale.ENGLISH, TABLE);
    private static final Typing ENGLISH = Typing.of(TABLE, Locale.UK, WORDING::word);
    private static final Typing GERMAN = Typing.of(TABLE, Locale.GERMANY, WORDING::word);

    private static Field field(String path) {
        return TABLE.find(path).orElseThrow();
    }

    private static Typing in(String language) {
        return language.equals("de") ? GERMAN : ENGLISH;
    }

    /** The value, or the facts of a group as "name=value"; nothing is "-". */
    private static String meaning(Typed typed) {
        if (typed instanceof Typed.Value value) return value.text() == null ? "-" : value.text();
        if (typed instanceof Typed.Facts facts) {
            List<String> all = new ArrayList<>();
            facts.facts().forEach((name, text) -> all.add(name + "=" + (text == null ? "-" : text)));
            return String.join(" ", all);
        }
        return sentence(typed);
    }

    private static String sentence(Typed typed) {
        return WORDING.of(((Typed.NotUnderstood) typed).problem().phrase());
    }

    @ParameterizedTest(name = "{0} {1}: {2} is {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "en | circuits.cable.lengthM                | 12        | 12",
                "en | circuits.cable.lengthM                | 12.5      | 12.5",
                "en | circuits.cable.lengthM                | 12,5      | 12.5",
                "de | circuits.cable.lengthM                | 12,5      | 12.5",
                "de | circuits.cable.lengthM                | 12.5      | 12.5",
                "de | circuits.cable.lengthM                | 12,500    | 12.5",
                "en | circuits.cable.lengthM                | 12.500    | 12.5",
                "en | circuits.cable.lengthM                | 0,025     | 0.025",
                "de | circuits.cable.lengthM                | 0.025     | 0.025",
                "en | circuits.cable.lengthM                | 25 cm     | 0.25",
                "de | circuits.cable.lengthM                | 1250mm    | 1.25",
                "en | circuits.cable.lengthM                | .5        | 0.5",
                "en | circuits.cable.lengthM                | +7 m      | 7",
                "en | circuits.load.powerW                  | 2200      | 2200",
                "de | circuits.load.powerW                  | 2,2 kW    | 2200",
                "en | circuits.load.powerW                  | 2.2kw     | 2200",
                "en | circuits.load.powerW                  | 3.68 kW   | 3680",
                "en | circuits.rcd.ratedResidualCurrentA    | 30 mA     | 0.03",
                "en | circuits.rcd.ratedResidualCurrentA    | 30 ma     | 0.03",
                "en | circuits.rcd.ratedResidualCurrentA    | 0.03      | 0.03",
                "de | circuits.rcd.ratedResidualCurrentA    | 0,3 A     | 0.3",
                "en | circuits.rcd.ratedResidualCurrentA    | 30        | 0.03",
                "en | inverters.residualRatedCurrentA       | 300       | 0.3",
                "en | electrodes.resistanceOhm              | 5 kΩ      | 5000",
                "en | electrodes.resistanceOhm              | 5 kohm    | 5000",
                "en | supply.loopImpedanceOhm               | 350 mΩ    | 0.35",
                "en | supply.prospectiveCurrentA            | 6 kA      | 6000",
                "en | batteries.usableEnergyWh              | 10.2 kWh  | 10200",
                "en | inverters.ratedPowerVa                | 10 kVA    | 10000",
                "en | inverters.overload.timeS              | 5 min     | 300",
                "en | inverters.shutOffTimeS                | 20 ms     | 0.02",
                "en | circuits.load.thirdHarmonicRatio      | 33 %      | 0.33",
                "en | circuits.load.startCurrentRatio       | 6×        | 6",
                "en | place.longitudeDeg                    | −3.7°     | -3.7",
                "en | circuits.cable.ambientDegC            | 25 °C     | 25",
                "en | circuits.cable.crossSectionMm2        | 2.5 mm²   | 2.5",
                "en | circuits.cable.crossSectionMm2        | 3×2.5     | 2.5",
                "de | circuits.cable.crossSectionMm2        | 5x1,5 mm2 | 1.5",
                "en | busPorts.rateBitPerS                  | 9.6 kbit/s | 9600",
                "en | islandingSwitches.poles               | 4         | 4",
                "de | islandingSwitches.poles               | 4,0       | 4",
            })
    void numbersTakeADecimalSignAndAUnit(String language, String path, String typed, String value) {
        assertThat(meaning(in(language).read(field(path), typed))).isEqualTo(value);
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "en | circuits.load.powerW          | 1,500     | 1,500 can be read as 1500 and as 1.500",
                "de | circuits.load.powerW          | 1.500     | 1.500 can be read as 1500 and as 1,500",
                "de | circuits.load.powerW          | 1.234,5   | 1.234,5 holds a thousands separator. Write 1234,5.",
                "en | circuits.load.powerW          | 1,234.5   | 1,234.5 holds a thousands separator. Write 1234.5.",
                "en | circuits.load.powerW          | 1 500 W   | 1 500 W holds a thousands separator. Write 1500.",
                "en | circuits.load.powerW          | 1'500     | 1'500 holds a thousands separator. Write 1500.",
                "en | circuits.load.powerW          | 12 14     | found 12 14. Write a number, such as 2.5 W.",
                "en | circuits.load.powerW          | about two | found about two. Write a number, such as 2.5 W.",
                "en | circuits.load.powerW          | 2 kVA     | kVA is no unit of it. Units it takes: W, kW, MW.",
                "en | circuits.load.powerW          | 2 mW      | mW is no unit of it",
                "en | circuits.cable.lengthM        | 3 kW      | kW is no unit of it. Units it takes: m, mm, cm, km.",
                "en | circuits.cable.lengthM        | 1.2.3     | found 1.2.3. Write a number, such as 2.5 m.",
                "en | circuits.cable.lengthM        | ,         | found ,. Write a number, such as 2.5 m.",
                "de | circuits.cable.lengthM        | lang      | found lang. Write a number, such as 2,5 m.",
                "en | circuits.load.powerFactorRatio | 0.9 W    | It is a plain number",
                "en | islandingSwitches.poles       | 2.5       | Write a whole number",
                "en | isolators.lockable            | perhaps   | Write yes or no.",
                "en | circuits.rcd.type             | type X    | there is no type X",
                "en | circuits.load.kind            | sawna     | Did you mean sauna?",
                "en | circuits.conductors           | L1 N earth | there is no L1 N earth",
                "en | evidence.on                   | 31.2.2026 | Write year, month and day, such as 2026-10-12.",
                "en | evidence.on                   | 3/4/2026  | Write year, month and day, such as 2026-10-12.",
                "en | circuits.protection           | sixteen   | such as B16",
                "en | circuits.protection           | X16       | such as B16",
                "en | circuits.rcd                  | 30        | such as 40 A 30 mA A",
                "en | circuits.rcd                  | 30 mA Q   | such as 40 A 30 mA A",
                "en | circuits.cable                | thick     | such as 3×2.5",
                "en | inverters.overload            | twice     | It has several fields",
                "en | circuits.load                 | sauna     | It has several fields",
            })
    void whatIsNotUnderstoodIsRefusedInASentenceThatNamesItAndShowsTheWay(
            String language, String path, String typed, String says) {
        Typed refused = in(language).read(field(path), typed);
        assertThat(refused).isInstanceOf(Typed.NotUnderstood.class);
        assertThat(sentence(refused)).startsWith(field(path).words() + ": ").contains(says);
        assertThat(((Typed.NotUnderstood) refused).problem().field()).isEqualTo(path);
    }

    @ParameterizedTest(name = "{0}: {1} is {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "circuits.protection.kind      | MCB                     | MCB",
                "circuits.protection.kind      | mcb                     | MCB",
                "circuits.protection.kind      | circuit-breaker         | CIRCUIT_BREAKER",
                "circuits.protection.kind      | Circuit breaker         | CIRCUIT_BREAKER",
                "circuits.protection.kind      | fuse                    | FUSE",
                "circuits.protection.curve     | b                       | B",
                "circuits.protection.curve     | curve C                 | C",
                "circuits.rcd.type             | type B                  | B",
                "circuits.rcd.type             | ac                      | AC",
                "circuits.rcd.delay            | S                       | SELECTIVE",
                "circuits.rcd.delay            | selective               | SELECTIVE",
                "circuits.cable.material       | Alu                     | ALUMINIUM",
                "circuits.cable.insulation     | xlpe                    | XLPE",
                "circuits.cable.method         | method B2               | B2",
                "circuits.load.kind            | heat pump               | HEAT_PUMP",
                "circuits.load.kind            | HEAT_PUMP               | HEAT_PUMP",
                "circuits.load.start           | star-delta              | STAR_DELTA",
                "circuits.load.equipmentClass  | II                      | II",
                "circuits.load.equipmentClass  | class I                 | I",
                "circuits.importance           | must run                | MUST_RUN",
                "circuits.stayOn               | never                   | NEVER",
                "boards.surgeProtection        | type 1+2                | TYPE_1_2",
                "supply.earthingSystem         | tn-c-s                  | TN_C_S",
                "isolators.lockable            | yes                     | true",
                "isolators.lockable            | No                      | false",
                "isolators.lockable            | ✓                       | true",
                "evidence.on                   | 2026-10-12              | 2026-10-12",
                "evidence.on                   | 12.10.2026              | 2026-10-12",
                "circuits.conductors           | L1 N PE                 | [\"L1\",\"N\",\"PE\"]",
                "circuits.conductors           | l1, n, pe               | [\"L1\",\"N\",\"PE\"]",
                "circuits.conductors           | L1-L3 N PE              | [\"L1\",\"L2\",\"L3\",\"N\",\"PE\"]",
                "circuits.conductors           | L1–3/N/PE               | [\"L1\",\"L2\",\"L3\",\"N\",\"PE\"]",
                "circuits.conductors           | 3/N/PE                  | [\"L1\",\"L2\",\"L3\",\"N\",\"PE\"]",
                "circuits.conductors           | L2+PEN                  | [\"L2\",\"PEN\"]",
                "circuits.sharedNeutralWith    | oven, hob               | [\"oven\",\"hob\"]",
                "circuits.sharedNeutralWith    | oven hob                | [\"oven\",\"hob\"]",
                "controlPorts.terminals        | A1; A2                  | [\"A1\",\"A2\"]",
                "circuits.designation          | Garden: lights & pump   | Garden: lights & pump",
                "circuits.designation          | 12                      | 12",
                "circuits.fedFrom              | main-board              | main-board",
                "controlCables.cores.from      | switch-coil/A1          | switch-coil/A1",
                "circuits.cable.lengthM        | ' '                     | -",
            })
    void wordsListsAndNamesAreReadAsTheyArePrinted(String path, String typed, String value) {
        assertThat(meaning(ENGLISH.read(field(path), typed))).isEqualTo(value);
    }

    @ParameterizedTest(name = "{0}: {1} is {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "circuits.protection | B16          | kind=MCB curve=B ratedCurrentA=16",
                "circuits.protection | c 10         | kind=MCB curve=C ratedCurrentA=10",
                "circuits.protection | MCB B 16 A   | kind=MCB curve=B ratedCurrentA=16",
                "circuits.protection | circuit-breaker C63 | kind=CIRCUIT_BREAKER curve=C ratedCurrentA=63",
                "circuits.protection | D?           | kind=MCB curve=D",
                "circuits.protection | 16 A         | ratedCurrentA=16",
                "circuits.protection | gG 25        | kind=FUSE curve=- energyLimitingClass=- largestBackupFuseA=- "
                        + "conditionalShortCircuitCurrentA=- ratedCurrentA=25",
                "supply.mainFuse     | 63 A gG      | kind=FUSE curve=- energyLimitingClass=- largestBackupFuseA=- "
                        + "conditionalShortCircuitCurrentA=- ratedCurrentA=63",
                "circuits.rcd        | 30 mA A      | ratedResidualCurrentA=0.03 type=A",
                "circuits.rcd        | 40 A 30 mA F | ratedCurrentA=40 ratedResidualCurrentA=0.03 type=F",
                "circuits.rcd        | RCD type B 30mA | ratedResidualCurrentA=0.03 type=B",
                "circuits.rcd        | 63/0.3 B S   | ratedCurrentA=63 ratedResidualCurrentA=0.3 type=B delay=SELECTIVE",
                "circuits.rcd        | 40A/30mA A   | ratedCurrentA=40 ratedResidualCurrentA=0.03 type=A",
                "circuits.rcd        | 300 mA A general | ratedResidualCurrentA=0.3 type=A delay=GENERAL",
                "circuits.cable      | 3×2.5        | crossSectionMm2=2.5",
                "circuits.cable      | 5x4 12 m     | crossSectionMm2=4 lengthM=12",
                "circuits.cable      | 3 * 1,5 mm² 850 cm | crossSectionMm2=1.5 lengthM=8.5",
                "circuits.cable      | 2.5 mm²      | crossSectionMm2=2.5",
            })
    void devicesAndCablesAreReadInTheShorthandOfTheTrade(String path, String typed, String facts) {
        assertThat(meaning(ENGLISH.read(field(path), typed))).isEqualTo(facts);
    }

    @Test
    void aCableIsCountedAgainstTheConductorsOfItsCircuit() {
        List<String> three = List.of("L1", "N", "PE");
        for (String path : List.of("circuits.cable", "circuits.cable.crossSectionMm2")) {
            assertThat(ENGLISH.read(field(path), "3x2.5", three)).isNotInstanceOf(Typed.NotUnderstood.class);
            assertThat(sentence(ENGLISH.read(field(path), "5x2.5", three)))
                    .contains("5x2.5 has 5 conductors; stated are L1 N PE");
        }
    }

    @Test
    void aThingIsFoundByItsPrintedNameUnlessSeveralBearIt() {
        Map<ThingId, String> names = Map.of(
                new ThingId("rcd-1"), "Cellar RCD",
                new ThingId("rcd-2"), "RCD, upper floor",
                new ThingId("a"), "Lights",
                new ThingId("b"), "Lights");
        Typing typing = ENGLISH.with(names);
        Field fedFrom = field("circuits.fedFrom");
        assertThat(meaning(typing.read(fedFrom, "cellar  rcd"))).isEqualTo("rcd-1");
        assertThat(meaning(typing.read(fedFrom, "rcd-2"))).isEqualTo("rcd-2");
        assertThat(meaning(typing.read(fedFrom, "supply"))).isEqualTo("supply");
        assertThat(sentence(typing.read(fedFrom, "Lights"))).contains("Write the id of one: a, b.");
        assertThat(sentence(typing.read(fedFrom, "Celar RCD"))).contains("Did you mean Cellar RCD?");
        assertThat(sentence(typing.read(fedFrom, "Observatory"))).contains("nothing here is called Observatory");
        // What stands in the cell reads back as the same thing.
        assertThat(typing.text(fedFrom, "rcd-1")).isEqualTo("Cellar RCD");
        assertThat(typing.text(fedFrom, "rcd-2")).isEqualTo("rcd-2");
        assertThat(typing.text(fedFrom, "a")).isEqualTo("a");
    }

    @Test
    void onlyWhatDiffersBecomesAnEdit() {
        Map<String, String> now = Map.of(
                "oven.protection.kind", "MCB", "oven.protection.curve", "B", "oven.protection.ratedCurrentA", "16");
        Typed typed = ENGLISH.read(field("circuits.protection"), "C16");
        assertThat(typed.edits("oven.protection", now::get))
                .containsExactly(new Edit("oven.protection.curve", "B", "C"));
        assertThat(ENGLISH.read(field("circuits.protection"), "B16").edits("oven.protection", now::get))
                .isEmpty();
        assertThat(ENGLISH.read(field("circuits.cable.lengthM"), "").edits("oven.cable.lengthM", path -> "12"))
                .containsExactly(new Edit("oven.cable.lengthM", "12", null));
    }

    @ParameterizedTest(name = "{0} = {1} stands as {2} and in German as {3}")
    @CsvSource(
            delimiter = '|',
            value = {
                "circuits.cable.lengthM             | 12.375               | 12.375        | 12,375",
                "circuits.load.powerW               | 12345                | 12345         | 12345",
                "supply.loopImpedanceOhm            | 0.0123456            | 0.0123456     | 0,0123456",
                "circuits.rcd.ratedResidualCurrentA | 0.03                 | 30 mA         | 30 mA",
                "circuits.rcd.ratedResidualCurrentA | 0.0061               | 6.1 mA        | 6,1 mA",
                "place.longitudeDeg                 | -3.7                 | -3.7          | -3,7",
                "circuits.protection.kind           | FUSE                 | fuse          | fuse",
                "isolators.lockable                 | true                 | yes           | yes",
                "circuits.conductors                | '[\"L1\",\"N\",\"PE\"]' | L1 N PE    | L1 N PE",
                "controlPorts.terminals             | '[\"A1\",\"A2\"]'    | A1; A2        | A1; A2",
                "circuits.protection                | '{\"kind\":\"MCB\",\"curve\":\"B\",\"ratedCurrentA\":16,\"breakingCapacityA\":6000}' | B16 | B16",
                "circuits.protection                | '{\"kind\":\"FUSE\",\"ratedCurrentA\":35}' | gG 35 | gG 35",
                "circuits.rcd | '{\"type\":\"A\",\"delay\":\"SELECTIVE\",\"ratedResidualCurrentA\":0.3,\"ratedCurrentA\":63}' | 63 A 300 mA A S | 63 A 300 mA A S",
                "circuits.rcd | '{\"type\":\"F\"}' | ? mA F | ? mA F",
                "circuits.cable | '{\"lengthM\":12.5,\"crossSectionMm2\":2.5}' | 2.5 mm² 12.5 m | 2,5 mm² 12,5 m",
            })
    void theCellHoldsEveryDigit(String path, String value, String english, String german) {
        assertThat(ENGLISH.text(field(path), value)).isEqualTo(english);
        assertThat(GERMAN.text(field(path), value)).isEqualTo(german);
    }

    static Stream<Field> fields() {
        return TABLE.all().stream().filter(field -> field.path().indexOf('.') > 0);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("fields")
    void whateverStandsInACellReadsBackAsTheSameValue(Field field) {
        for (Typing typing : List.of(ENGLISH, GERMAN))
            for (String value : values(field)) {
                String cell = typing.text(field, value);
                assertThat(cell).isNotBlank();
                Typed back = typing.read(field, cell);
                if (back instanceof Typed.Facts facts) assertThat(value).satisfies(group -> agrees(group, facts));
                else assertThat(back).as(cell).isEqualTo(new Typed.Value(value));
            }
    }

    /** Facts read from shorthand are those of the group; what shorthand does not tell, it does not touch. */
    private static void agrees(String group, Typed.Facts facts) {
        assertThat(facts.facts()).isNotEmpty();
        Map<String, @Nullable String> wrong = new HashMap<>();
        facts.facts().forEach((name, text) -> {
            boolean same = text == null
                    ? !group.contains("\"" + name + "\"")
                    : group.contains("\"" + name + "\":" + text) || group.contains("\"" + name + "\":\"" + text + "\"");
            if (!same) wrong.put(name, text);
        });
        assertThat(wrong).as(group).isEmpty();
    }

    /** Values of the field's kind, awkward ones among them. */
    private static List<String> values(Field field) {
        List<String> values = new ArrayList<>();
        switch (field.kind()) {
            case ID, REFERENCE -> values.addAll(List.of("a", "oven-2", "supply"));
            case TEXT -> values.addAll(List.of("Oven", "12", "true", "=1+1", "a; b", "L1 – „Küche“"));
            case TERMINAL -> values.add("switch-coil/A1");
            case DATE -> values.add("2026-10-12");
            case YES_NO -> values.addAll(List.of("true", "false"));
            case TEXTS ->
                values.addAll(List.of(
                        "[\"A1\",\"A2\"]", "[\"a; b\",\"c\"]", "[\"[x]\"]", "[\"one\\ntwo\"]", "[\" x\"]", "[\"A1\"]"));
            case REFERENCES -> values.addAll(List.of("[\"oven\"]", "[\"oven\",\"hob-2\"]"));
            case WORD, WORDS -> {
                for (Object word : TABLE.valueType(field).getEnumConstants()) {
                    String name = ((Enum<?>) word).name();
                    values.add(field.kind() == FieldKind.WORD ? name : "[\"" + name + "\"]");
                }
            }
            case WHOLE -> {
                for (Double limit : limits(field)) values.add(String.valueOf(limit.longValue()));
            }
            case NUMBER -> {
                for (Double limit : limits(field)) values.add(shortest(limit));
                values.addAll(List.of("0.1", "1.005", "0.30000000000000004", "123.456"));
            }
            case GROUP, GROUPS -> values.addAll(groups(field));
        }
        return values;
    }

    private static List<Double> limits(Field field) {
        return List.of(field.min(), field.max());
    }

    private static String shortest(double value) {
        return Numbers.shortest(value);
    }

    private static List<String> groups(Field field) {
        return switch (field.name()) {
            case "protection", "mainFuse" ->
                List.of(
                        "{\"kind\":\"MCB\",\"curve\":\"B\",\"ratedCurrentA\":16}",
                        "{\"kind\":\"CIRCUIT_BREAKER\",\"curve\":\"C\",\"ratedCurrentA\":63,\"breakingCapacityA\":10000}",
                        "{\"kind\":\"FUSE\",\"ratedCurrentA\":35}",
                        "{\"kind\":\"FUSE\",\"curve\":\"B\",\"ratedCurrentA\":35}",
                        "{\"kind\":\"FUSE\",\"ratedCurrentA\":35,\"energyLimitingClass\":3}",
                        "{\"kind\":\"MCB\",\"ratedCurrentA\":0.5}",
                        "{\"kind\":\"MCB\",\"curve\":\"K\"}",
                        "{\"curve\":\"B\",\"ratedCurrentA\":16}",
                        "{\"ratedCurrentA\":16}");
            case "rcd" ->
                List.of(
                        "{\"type\":\"A\",\"delay\":\"GENERAL\",\"ratedResidualCurrentA\":0.03,\"ratedCurrentA\":40}",
                        "{\"type\":\"B\",\"delay\":\"SELECTIVE\",\"ratedResidualCurrentA\":0.3}",
                        "{\"type\":\"AC\",\"ratedResidualCurrentA\":0.0061}",
                        "{\"ratedResidualCurrentA\":0.03}");
            case "cable" ->
                List.of(
                        "{\"lengthM\":12.5,\"crossSectionMm2\":2.5,\"material\":\"COPPER\"}",
                        "{\"crossSectionMm2\":16}");
            default -> List.of(field.kind() == FieldKind.GROUP ? "{\"a\":1}" : "[{\"a\":1}]");
        };
    }

    @Test
    void whateverIsTypedIsUnderstoodOrRefusedInASentence() {
        String signs = "0123459.,,'’-−+ /×x*LNPEBCSAg?mMkW%Ω²;[]{}\":=\t\n\u00a0\ud83d";
        Random random = new Random(5);
        int understood = 0;
        int refused = 0;
        for (Field field : fields().toList())
            for (int i = 0; i < 300; i++) {
                StringBuilder typed = new StringBuilder();
                int length = random.nextInt(1, 9);
                for (int j = 0; j < length; j++) typed.append(signs.charAt(random.nextInt(signs.length())));
                Typed read = in(i % 2 == 0 ? "en" : "de").read(field, typed.toString(), List.of("L1", "N", "PE"));
                if (read instanceof Typed.NotUnderstood) {
                    refused++;
                    assertThat(sentence(read)).startsWith(field.words() + ": ").doesNotContain("cell.");
                } else understood++;
            }
        assertThat(understood).isGreaterThan(1000);
        assertThat(refused).isGreaterThan(1000);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void noTwoWordsOfOneFieldCanBeTakenForEachOther(String language) {
        Map<String, Set<String>> taken = new LinkedHashMap<>();
        fields().filter(field -> field.kind() == FieldKind.WORD).forEach(field -> {
            Set<String> seen = new HashSet<>();
            for (Object word : TABLE.valueType(field).getEnumConstants()) {
                String printed = WORDING.word((Enum<?>) word);
                String read = meaning(in(language).read(field, printed));
                if (!read.equals(((Enum<?>) word).name()) || !seen.add(printed))
                    taken.computeIfAbsent(field.path(), path -> new HashSet<>()).add(printed + " is read as " + read);
            }
        });
        assertThat(taken).isEmpty();
    }
}
