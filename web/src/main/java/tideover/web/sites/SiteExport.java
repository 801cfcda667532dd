package tideover.web.sites;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Locale;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import tideover.files.FieldTable;
import tideover.files.SiteWriter;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Sites as files, to be kept, sent or brought back: nothing of them is lost. */
@RestController
final class SiteExport {
    private static final int LONGEST_NAME = 60;

    private final Works works;
    private final SiteWriter writer;

    SiteExport(Works works, FieldTable fields) {
        this.works = works;
        this.writer = new SiteWriter(fields);
    }

    @GetMapping("/sites/{variant}/site.yaml")
    ResponseEntity<byte[]> yaml(@PathVariable String variant) {
        Work work = works.open(variant);
        return file(work, ".yaml", "application/yaml", writer.yaml(work.site()));
    }

    @GetMapping("/sites/{variant}/site.json")
    ResponseEntity<byte[]> json(@PathVariable String variant) {
        Work work = works.open(variant);
        return file(work, ".json", MediaType.APPLICATION_JSON_VALUE, writer.canonicalJson(work.site()));
    }

    private static ResponseEntity<byte[]> file(Work work, String ending, String type, String text) {
        ContentDisposition saved =
                ContentDisposition.attachment().filename(name(work) + ending).build();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType(type))
                .header(HttpHeaders.CONTENT_DISPOSITION, saved.toString())
                .header(HttpHeaders.CACHE_CONTROL, "no-store")
                .body(text.getBytes(StandardCharsets.UTF_8));
    }

    /** A name that every system can save under: letters without accents, digits and hyphens. */
    private static String name(Work work) {
        String plain = Normalizer.normalize(work.row().designation(), Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}", "")
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
        String kept = plain.substring(0, Math.min(plain.length(), LONGEST_NAME));
        return kept.isEmpty() ? "site" : kept;
    }
}
