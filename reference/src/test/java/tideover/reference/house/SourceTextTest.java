package tideover.reference.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What must not stand in any text of the project. */
class SourceTextTest {

    private static final String[] TEXTS = {
        ".java",
        ".xml",
        ".yaml",
        ".csv",
        ".properties",
        ".md",
        ".html",
        ".css",
        ".js",
        ".sql",
        "/tideover",
        "/check",
        "/measure",
        "/run"
    };

    /** Put together here, so that this file does not find itself. */
    private static final Pattern UNFINISHED = Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b");

    private static final Pattern PATH_OF_ONE_MACHINE = Pattern.compile("(?<![\\w.])/(home|root|Users|tmp)/\\w");

    @Test
    void nothingIsMarkedAsUnfinished() {
        assertThat(found(UNFINISHED)).isEmpty();
    }

    @Test
    void nothingNamesAPathOfOneMachine() {
        assertThat(found(PATH_OF_ONE_MACHINE)).isEmpty();
    }

    private static List<String> found(Pattern pattern) {
        List<String> places = new ArrayList<>();
        for (var file : ProjectFiles.endingIn(ProjectFiles.ROOT, TEXTS)) {
            int number = 0;
            for (String line : ProjectFiles.lines(file)) {
                number++;
                Matcher matcher = pattern.matcher(line);
                if (matcher.find())
                    places.add("%s:%d: %s".formatted(ProjectFiles.ROOT.relativize(file), number, matcher.group()));
            }
        }
        return places;
    }
}
