package tideover.web.guard;

import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import tideover.web.trial.Desk;
import tideover.web.trial.Visitor;

/** Everything that links of the workbench lead to, a few of each kind. */
final class Crawl {
    private static final Pattern LINK = Pattern.compile("(?:href|src)=\"([^\"]+)\"");
    private static final int OF_EACH_KIND = 2;

    private Crawl() {}

    /**
     * What is there.
     *
     * @param type as the header says
     */
    record Found(String path, String type, byte[] bytes) {
        String text() {
            return new String(bytes, StandardCharsets.UTF_8);
        }

        boolean is(String wanted) {
            return type.startsWith(wanted);
        }
    }

    /** Follows links from these pages on; every answer must be a good one. */
    static List<Found> from(Desk desk, Visitor visitor, List<String> first) {
        Map<String, Found> found = new LinkedHashMap<>();
        Map<String, Integer> kinds = new TreeMap<>();
        Deque<String> todo = new ArrayDeque<>(first);
        while (!todo.isEmpty()) {
            String path = todo.poll();
            String kind = path.replaceAll("[?#].*", "")
                    .replaceAll("[0-9a-f]{16}", "{}")
                    .replaceAll("/(things|network|findings|terminals|curves|photos|at)/[^.]*", "/$1/{}");
            if (found.containsKey(path) || kinds.merge(kind, 1, Integer::sum) > OF_EACH_KIND && !first.contains(path))
                continue;
            HttpResponse<byte[]> answer = visitor.download(path);
            if (answer.statusCode() == 303) {
                todo.add(answer.headers().firstValue("Location").orElseThrow());
                continue;
            }
            if (answer.statusCode() != 200) throw new AssertionError(path + " answered " + answer.statusCode());
            Found page =
                    new Found(path, answer.headers().firstValue("Content-Type").orElse(""), answer.body());
            found.put(path, page);
            if (!page.is("text/html")) continue;
            Matcher link = LINK.matcher(page.text());
            while (link.find()) {
                URI address = URI.create(desk.at(path)).resolve(link.group(1).replace("&amp;", "&"));
                String target =
                        address.getRawPath() + (address.getRawQuery() == null ? "" : "?" + address.getRawQuery());
                boolean ours = desk.origin().equals(address.getScheme() + "://" + address.getRawAuthority());
                if (!ours) throw new AssertionError(path + " links to " + link.group(1));
                if (!target.startsWith("/assets/")) todo.add(target);
            }
        }
        return List.copyOf(found.values());
    }
}
