package tideover.web.page;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import org.springframework.stereotype.Component;
import tideover.files.FieldTable;
import tideover.papers.Wording;

/** Wording in the language that the browser asks for; its decimal sign comes with it. */
@Component
public final class Languages {
    private static final Set<Locale> KNOWN =
            Arrays.stream(Locale.getAvailableLocales()).collect(Collectors.toUnmodifiableSet());

    private final FieldTable fields;
    private final Map<Locale, Wording> wordings = new ConcurrentHashMap<>();

    Languages(FieldTable fields) {
        this.fields = fields;
    }

    /** The first language of the request that the platform knows; English where there is none. */
    public Wording of(HttpServletRequest request) {
        Locale asked = request.getLocale();
        // Only known ones are kept: whoever makes up others must not fill the memory.
        return KNOWN.contains(asked)
                ? wordings.computeIfAbsent(asked, locale -> Wording.of(locale, fields))
                : of(Locale.ENGLISH);
    }

    private Wording of(Locale locale) {
        return wordings.computeIfAbsent(locale, known -> Wording.of(known, fields));
    }
}
