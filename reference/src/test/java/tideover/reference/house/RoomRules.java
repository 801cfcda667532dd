package tideover.reference.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.CompositeArchRule;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which room may use which; the rooms that come later are named already. */
@AnalyzeClasses(packages = "tideover", importOptions = DoNotIncludeTests.class)
class RoomRules {

    private static final Map<String, Set<String>> MAY_USE = Map.of(
            "engine", Set.of(),
            "solver", Set.of("engine"),
            "files", Set.of("engine"),
            "papers", Set.of("engine"),
            "store", Set.of("engine", "files"),
            "command", Set.of("engine", "solver", "files", "papers", "store"),
            "web", Set.of("engine", "solver", "files", "papers", "store"),
            "reference", Set.of("engine", "solver", "files", "papers", "store", "command", "web", "bench"),
            "bench", Set.of("engine", "solver", "files", "papers", "store", "command", "web"));

    private static final List<String> WEB_FRAMEWORK = List.of(
            "org.springframework..", "jakarta.servlet..", "org.apache.catalina..", "org.apache.tomcat..", "gg.jte..");

    @ArchTest
    static final ArchRule everyClassHasARoom = classes()
            .should()
            .resideInAnyPackage(MAY_USE.keySet().stream().map(RoomRules::room).toArray(String[]::new))
            .as("every class lies in one of the rooms");

    @ArchTest
    static final ArchRule roomsUseOnlyWhatTheyMay = CompositeArchRule.of(MAY_USE.keySet().stream()
                    .sorted()
                    .map(RoomRules::usesOnlyWhatItMay)
                    .toList())
            .as("rooms use only what the design lets them");

    @ArchTest
    static final ArchRule onlyWebKnowsTheWebFramework = noClasses()
            .that()
            .resideOutsideOfPackage(room("web"))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(WEB_FRAMEWORK.toArray(String[]::new));

    @ArchTest
    static final ArchRule onlyFilesAndStoreAndTheEdgesOpenFiles = noClasses()
            .that()
            .resideInAnyPackage(room("solver"), room("papers"))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.nio.file..", "java.net..", "java.sql..")
            .allowEmptyShould(true)
            .as("solver and papers hand back bytes; the edges write them");

    @ArchTest
    static final ArchRule onlyTheEdgesLog = noClasses()
            .that()
            .resideInAnyPackage(room("engine"), room("solver"), room("papers"))
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("org.slf4j..", "org.apache.commons.logging..");

    private static ArchRule usesOnlyWhatItMay(String room) {
        String[] others = MAY_USE.keySet().stream()
                .filter(other -> !other.equals(room) && !MAY_USE.get(room).contains(other))
                .map(RoomRules::room)
                .toArray(String[]::new);
        return noClasses()
                .that()
                .resideInAPackage(room(room))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(others)
                .allowEmptyShould(true);
    }

    private static String room(String name) {
        return "tideover." + name + "..";
    }
}
