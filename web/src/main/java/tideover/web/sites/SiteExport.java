package tideover.web.sites;

import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RestController;
import tideover.files.FieldTable;
import tideover.files.SiteWriter;
import tideover.web.page.Download;
import tideover.web.work.Work;
import tideover.web.work.Works;

/** Sites as files, to be kept, sent or brought back: nothing of them is lost. */
@RestController
final class SiteExport {
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
        String name = Download.name(work.row().designation(), "site") + ending;
        return Download.text(MediaType.parseMediaType(type), name, text);
    }
}
