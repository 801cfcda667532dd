package tideover.web.api;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import tideover.web.trial.Desk;
import tideover.web.trial.Program;

/** The description and the routes there are, each held against the other. */
class ApiDescriptionTest {
    private static final ApiDescription DESCRIPTION = new ApiDescription();
    private static Desk desk;

    @BeforeAll
    static void open() {
        desk = Desk.open();
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @Test
    void everyRouteForProgramsIsDescribedAndNothingElseIs() {
        Set<String> routes = new TreeSet<>();
        desk.part(RequestMappingHandlerMapping.class)
                .getHandlerMethods()
                .keySet()
                .forEach(route -> route.getPatternValues().stream()
                        .filter(path -> path.startsWith("/api/"))
                        .forEach(path -> route.getMethodsCondition()
                                .getMethods()
                                .forEach(method -> routes.add(method + " " + path))));
        assertThat(routes).isNotEmpty().isEqualTo(DESCRIPTION.operations());
    }

    @Test
    void theDescriptionIsWhole() {
        assertThat(DESCRIPTION.danglingReferences()).isEmpty();
        assertThat(DESCRIPTION.names()).doesNotContain("null").doesNotHaveDuplicates();
        for (String operation : DESCRIPTION.operations())
            assertThat(DESCRIPTION.statuses(operation.split(" ")[0], operation.split(" ")[1]))
                    .as(operation)
                    .contains("default")
                    .containsAnyOf("200", "201", "204");
    }

    @Test
    void theDescriptionIsServed() {
        assertThat(Program.text(desk.program().get("/api/openapi.yaml"))).startsWith("openapi: 3.1.0");
    }
}
