package tideover.bench;

import java.io.IOException;
import java.nio.file.Path;
import tideover.engine.rules.RuleBook;
import tideover.engine.site.Site;
import tideover.files.FieldTable;
import tideover.files.SiteFileResult.Readable;
import tideover.files.SiteFiles;
import tideover.files.rules.RuleBooks;

/** Reads the site that inputs are made from. */
final class SiteFile {

    private SiteFile() {}

    /** @throws IllegalArgumentException if the file is refused */
    static Site read(Path file) throws IOException {
        if (new SiteFiles(FieldTable.load()).read(file) instanceof Readable readable) return readable.site();
        throw new IllegalArgumentException(file + " is refused; see what ./tideover check says of it");
    }

    /** The rule book of a site's country. @throws IllegalArgumentException if it says none */
    static RuleBook rules(Site site) {
        String country = site.house().place().country();
        if (country == null) throw new IllegalArgumentException("the site says no country");
        return RuleBooks.load(country);
    }
}
