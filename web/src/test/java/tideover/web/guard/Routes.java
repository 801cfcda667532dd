package tideover.web.guard;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.springframework.web.bind.annotation.RequestMethod;
import org.springframework.web.servlet.mvc.method.RequestMappingInfo;
import org.springframework.web.servlet.mvc.method.annotation.RequestMappingHandlerMapping;
import tideover.web.trial.Desk;

/** Every route there is, as the framework knows them: none can be forgotten here. */
final class Routes {
    private Routes() {}

    /**
     * One route with one method.
     *
     * @param pattern as it is declared
     * @param path    the same with names of things that are there
     */
    record Route(RequestMethod method, String pattern, String path) {
        boolean isReading() {
            return method == RequestMethod.GET;
        }

        @Override
        public String toString() {
            return method + " " + pattern;
        }
    }

    /** @param site address of the pages of a site */
    static List<Route> of(Desk desk, String site) {
        List<Route> routes = new ArrayList<>();
        for (RequestMappingInfo mapping : desk.part(RequestMappingHandlerMapping.class)
                .getHandlerMethods()
                .keySet()) {
            Set<RequestMethod> methods = mapping.getMethodsCondition().getMethods();
            for (String pattern : mapping.getPatternValues())
                for (RequestMethod method :
                        methods.isEmpty() ? List.of(RequestMethod.GET, RequestMethod.POST) : methods)
                    routes.add(new Route(method, pattern, path(pattern, site)));
        }
        routes.sort(Comparator.comparing(Route::toString));
        return routes;
    }

    private static String path(String pattern, String site) {
        return pattern.replace("{variant}", site.substring(site.lastIndexOf('/') + 1))
                .replaceAll("\\{(thing|place)[^}]*}", "oven")
                .replaceAll("\\{[^}]*}", "1");
    }
}
