package tideover.files;

import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tideover.files.text.Nearest;
import tideover.files.yaml.Node.Scalar;

/** Codes from published lists: countries (ISO 3166-1, as the Java platform has them), time zones (IANA). */
final class Codes {
    private Codes() {}

    static @Nullable String country(Scalar scalar, String where, Problems problems, Nearest nearest) {
        String text = scalar.text();
        Set<String> countries = Locale.getISOCountries(Locale.IsoCountryCode.PART1_ALPHA2);
        if (countries.contains(text)) return text;
        // Reserved in the standard for the United Kingdom, whose code is another; often written.
        String near = text.equals("UK")
                ? "GB"
                : countries.contains(text.toUpperCase(Locale.ROOT)) ? nearest.of(text, countries) : null;
        String found = ValueReader.shortened(text);
        if (near == null) problems.add(scalar.spot(), where, ProblemKind.COUNTRY_UNKNOWN, found);
        else problems.add(scalar.spot(), where, ProblemKind.COUNTRY_UNKNOWN_NEAR, found, near);
        return null;
    }

    static @Nullable String timeZone(Scalar scalar, String where, Problems problems) {
        String text = scalar.text();
        try {
            // An offset such as +01:00 is a ZoneId too, but knows no summer time.
            if (text.indexOf('/') > 0 || text.equals("UTC"))
                return ZoneId.of(text).getId();
        } catch (DateTimeException e) {
            // Said below.
        }
        problems.add(scalar.spot(), where, ProblemKind.TIME_ZONE_UNKNOWN, ValueReader.shortened(text));
        return null;
    }
}
