package tideover.web.page;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.Utf8ByteOutput;
import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.security.web.csrf.CsrfToken;
import org.springframework.stereotype.Component;
import tideover.papers.Wording;

/** Renders templates. Each takes one value, {@code page}, whose type it names. */
@Component
public final class Pages {
    private static final MediaType HTML = MediaType.parseMediaType("text/html;charset=UTF-8");

    private final TemplateEngine engine =
            TemplateEngine.createPrecompiled(null, ContentType.Html, null, "gg.jte.generated.tideover");
    private final Languages languages;

    Pages(Languages languages) {
        this.languages = languages;
    }

    /** The frame of a page that belongs to no site. */
    public Frame frame(HttpServletRequest request, String titleKey) {
        Wording words = words(request);
        return new Frame(words.text(titleKey), words, formToken(request), null);
    }

    /**
     * The frame of a page of a site.
     *
     * @param shown what of the site is shown, worded
     */
    public Frame frame(HttpServletRequest request, Wording words, SiteHead head, String shown) {
        return new Frame(words.text("page.title", shown, head.name()), words, formToken(request), head);
    }

    /** Wording for whoever asks. */
    public Wording words(HttpServletRequest request) {
        return languages.of(request);
    }

    /** A whole page or a part of one. */
    public ResponseEntity<byte[]> show(String template, Object page) {
        return show(HttpStatus.OK, template, page);
    }

    /** The same with another status. */
    public ResponseEntity<byte[]> show(HttpStatus status, String template, Object page) {
        return ResponseEntity.status(status).contentType(HTML).body(bytes(template, page));
    }

    /** What a template makes of a page, in UTF-8. */
    public byte[] bytes(String template, Object page) {
        Utf8ByteOutput out = new Utf8ByteOutput();
        engine.render(template + ".jte", Map.of("page", page), out);
        return out.toByteArray();
    }

    /** What every form sends along, so that no other site can send it. */
    public static String formToken(HttpServletRequest request) {
        // A stranger gets no session to keep a token in.
        if (!Person.isLetIn()) return "";
        return request.getAttribute(CsrfToken.class.getName()) instanceof CsrfToken token ? token.getToken() : "";
    }
}
