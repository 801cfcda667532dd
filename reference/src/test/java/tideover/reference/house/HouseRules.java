package tideover.reference.house;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noCodeUnits;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaConstructor;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;

/** How code reads in this house: units in names, no getters, small packages that say whether null may pass. */
@AnalyzeClasses(packages = "tideover", importOptions = DoNotIncludeTests.class)
class HouseRules {

    /** Closed; longer with a release only. No milli, no mega: 0.03 in code, "30 mA" on paper. */
    private static final Pattern UNIT_SUFFIX =
            Pattern.compile(".*[a-z0-9](A|V|W|Va|Var|Wh|Ohm|OhmPerKm|M|Mm2|S|Min|Hz|H|F|A2s|Nm|DegC|Deg|Rad|Ratio"
                    + "|WPerM2|PerK|MPerS|BitPerS|Minor)|ratio|ohmPerKm");

    /** Values whose unit stands beside them, or in the name of the variable that holds them. */
    private static final Set<String> VALUE_TYPES = Set.of(
            "tideover.bench.Aim",
            "tideover.bench.ColdStart",
            "tideover.bench.Figure",
            "tideover.files.Field",
            "tideover.engine.site.PerLine",
            "tideover.engine.network.AdiabaticTable$Factors",
            "tideover.engine.network.flow.Phasor",
            "tideover.engine.rules.Limit",
            "tideover.engine.rules.Finding$Measure",
            "tideover.engine.rules.PhraseArg$Amount");

    private static final int LARGEST_PACKAGE = 30;

    /** One type for each part and each word of a site file: many, but flat, and read as one list. */
    private static final Map<String, Integer> LARGER_PACKAGES = Map.of("tideover.engine.site", 95);

    @ArchTest
    static final ArchRule numbersOfRecordsNameTheirUnit = classes()
            .that()
            .areRecords()
            .and(describe("are no value types", type -> !VALUE_TYPES.contains(type.getName())))
            .should(eachPart(
                    "name the unit of each double",
                    part -> !isDouble(part.getRawType())
                            || UNIT_SUFFIX.matcher(part.getName()).matches()));

    @ArchTest
    static final ArchRule recordsHoldNoArrays = classes()
            .that()
            .areRecords()
            .should(eachPart("hold no array", part -> !part.getRawType().isArray()));

    @ArchTest
    static final ArchRule nothingIsCalledGet = methods()
            .that(describe("are named by us", HouseRules::isNamedByUs))
            .should()
            .haveNameNotMatching("get([A-Z].*)?")
            .as("find… may find nothing, require… throws, a plain noun is there; nothing is called get…");

    @ArchTest
    static final ArchRule engineIsAskedWithEnumsNotBooleans = noCodeUnits()
            .that()
            .areDeclaredInClassesThat()
            .resideInAPackage("tideover.engine..")
            .and()
            .arePublic()
            .and(describe("are written by hand", HouseRules::isWrittenByHand))
            .should()
            .haveRawParameterTypes(describe(
                    "a boolean",
                    types -> types.stream()
                            .anyMatch(
                                    type -> type.isEquivalentTo(boolean.class) || type.isEquivalentTo(Boolean.class))));

    @ArchTest
    static void everyPackageIsNullMarkedAndSaysWhatIsInside(JavaClasses all) {
        var unmarked = all.stream()
                .map(JavaClass::getPackage)
                .distinct()
                .filter(room -> room.getClasses().stream().anyMatch(type -> !isPackageInfo(type)))
                .filter(room -> !room.isAnnotatedWith(NullMarked.class))
                .map(room -> room.getName())
                .sorted()
                .toList();
        assertNone(unmarked, "without a package-info that is @NullMarked");
    }

    @ArchTest
    static void packagesStaySmall(JavaClasses all) {
        Map<String, Integer> sizes = new TreeMap<>();
        all.stream()
                .filter(type -> type.isTopLevelClass() && !isPackageInfo(type))
                .forEach(type -> sizes.merge(type.getPackageName(), 1, Integer::sum));
        var tooLarge = sizes.entrySet().stream()
                .filter(entry -> entry.getValue() > LARGER_PACKAGES.getOrDefault(entry.getKey(), LARGEST_PACKAGE))
                .toList();
        assertNone(tooLarge, "with more types than an eye takes in");
    }

    private static void assertNone(List<?> packages, String trouble) {
        if (!packages.isEmpty()) throw new AssertionError("packages " + trouble + ": " + packages);
    }

    private static boolean isDouble(JavaClass type) {
        return type.isEquivalentTo(double.class) || type.isEquivalentTo(Double.class);
    }

    private static boolean isPackageInfo(JavaClass type) {
        return type.getSimpleName().equals("package-info");
    }

    /** Neither made by the compiler nor prescribed by a type from outside. */
    private static boolean isNamedByUs(JavaMethod method) {
        JavaClass owner = method.getOwner();
        return !method.getModifiers().contains(JavaModifier.SYNTHETIC)
                && Stream.concat(owner.getAllRawSuperclasses().stream(), owner.getAllRawInterfaces().stream())
                        .filter(type -> !type.getPackageName().startsWith("tideover"))
                        .flatMap(type -> type.getMethods().stream())
                        .noneMatch(other -> other.getName().equals(method.getName()));
    }

    /** A record's own constructor only repeats its parts; what the compiler makes has no reader. */
    private static boolean isWrittenByHand(JavaCodeUnit unit) {
        return !unit.getModifiers().contains(JavaModifier.SYNTHETIC)
                && !(unit instanceof JavaConstructor && unit.getOwner().isRecord());
    }

    private static ArchCondition<JavaClass> eachPart(String wish, Predicate<JavaField> holds) {
        return new ArchCondition<>(wish) {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                type.getFields().stream()
                        .filter(field -> !field.getModifiers().contains(JavaModifier.STATIC))
                        .forEach(part -> events.add(new SimpleConditionEvent(
                                part, holds.test(part), part.getFullName() + " does not " + wish)));
            }
        };
    }
}
