package tideover.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.CompositeArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** What engine may know: its packages in their order, and nothing of the world outside. */
@AnalyzeClasses(packages = "tideover.engine", importOptions = DoNotIncludeTests.class)
class EngineRules {

    /** Each may use those before it only. */
    private static final List<String> PACKAGES = List.of(
            "site",
            "rules",
            "installation",
            "network",
            "protection",
            "starting",
            "energy",
            "wiring",
            "assessment",
            "allocation",
            "commissioning");

    @ArchTest
    static final ArchRule hasNoOtherPackages = classes()
            .should()
            .resideInAnyPackage(inEngine(0, PACKAGES.size()))
            .as("engine has the packages of its design");

    @ArchTest
    static final ArchRule packagesUseOnlyThoseBefore = CompositeArchRule.of(IntStream.range(0, PACKAGES.size() - 1)
                    .mapToObj(i -> (ArchRule) noClasses()
                            .that()
                            .resideInAnyPackage(inEngine(i, i + 1))
                            .should()
                            .dependOnClassesThat()
                            .resideInAnyPackage(inEngine(i + 1, PACKAGES.size()))
                            .allowEmptyShould(true))
                    .toList())
            .as("site, rules, installation … commissioning: each uses those before it only");

    @ArchTest
    static final ArchRule standsOnJavaAlone = classes()
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage("tideover.engine..", "java..", "org.jspecify.annotations")
            .as("engine needs no framework");

    @ArchTest
    static final ArchRule knowsNoFileNetworkDatabaseOrLog = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.io",
                    "java.nio.file..",
                    "java.nio.channels..",
                    "java.net..",
                    "java.sql..",
                    "java.util.logging");

    @ArchTest
    static final ArchRule knowsNoLanguageOrLocale = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.text..")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.Locale")
            .orShould()
            .dependOnClassesThat()
            .haveFullyQualifiedName("java.util.ResourceBundle");

    @ArchTest
    static final ArchRule asksNoClockAndNoSurroundings = noClasses()
            .should()
            .dependOnClassesThat()
            .areAssignableTo(java.time.Clock.class)
            .orShould()
            .accessTargetWhere(asksTheMachine())
            .as("time and surroundings are parameters");

    @ArchTest
    static final ArchRule saysNothingByItself = GeneralCodingRules.NO_CLASSES_SHOULD_ACCESS_STANDARD_STREAMS;

    @ArchTest
    static final ArchRule keepsNothingBetweenCalls =
            fields().that().areStatic().should().beFinal().as("static fields are constants");

    private static DescribedPredicate<JavaAccess<?>> asksTheMachine() {
        Set<String> ofSystem = Set.of("currentTimeMillis", "nanoTime", "getenv", "getProperty");
        return DescribedPredicate.describe("the clock or the machine is asked", access -> {
            String owner = access.getTargetOwner().getName();
            return (owner.startsWith("java.time.") && access.getName().equals("now"))
                    || (owner.equals("java.lang.System") && ofSystem.contains(access.getName()));
        });
    }

    private static String[] inEngine(int from, int to) {
        return PACKAGES.subList(from, to).stream()
                .map(name -> "tideover.engine." + name + "..")
                .toArray(String[]::new);
    }
}
