package tideover.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * One site file again and again, each time with another cable a little longer: no two texts are the same, and each is
 * as much work as the original.
 */
final class EditedSites {

    private static final Pattern LENGTH = Pattern.compile("\\blengthM: *([0-9.]+)");

    private final String text;
    private final List<MatchResult> lengths;

    private EditedSites(String text, List<MatchResult> lengths) {
        this.text = text;
        this.lengths = lengths;
    }

    /** @throws IllegalArgumentException if the file has no cable, or is a variant that needs its base beside it */
    static EditedSites of(Path site) throws IOException {
        String text = Files.readString(site);
        List<MatchResult> lengths =
                new ArrayList<>(LENGTH.matcher(text).results().toList());
        if (text.contains("variantOf:"))
            throw new IllegalArgumentException(site + " is a variant; give the file that it is a variant of");
        if (lengths.isEmpty())
            throw new IllegalArgumentException(site + " has no lengthM that could be edited; give a site with cables");
        return new EditedSites(text, lengths);
    }

    /** The text of one round: another one for each round from 0. */
    String text(int round) {
        MatchResult length = lengths.get(round % lengths.size());
        double longerM = Double.parseDouble(length.group(1)) + 0.01 * (1 + round / lengths.size());
        return text.substring(0, length.start(1))
                + String.format(Locale.ROOT, "%.4f", longerM)
                + text.substring(length.end(1));
    }

    /** How large one text is. */
    String size() {
        return text.lines().count() + " lines";
    }
}
