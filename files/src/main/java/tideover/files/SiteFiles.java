package tideover.files;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import tideover.engine.site.Site;
import tideover.files.SiteFileResult.Readable;
import tideover.files.SiteFileResult.Refused;
import tideover.files.yaml.Node.Mapping;

/** Reads site files: YAML or JSON, whole sites or variants of one. Safe to share between threads. */
public final class SiteFiles {
    /** The newest format that is read, and the one that is written. */
    public static final int FORMAT = SiteKeys.FORMAT_VERSION;

    private final FieldTable table;

    public SiteFiles(FieldTable table) {
        this.table = table;
    }

    /**
     * Reads a site file. Whatever is in it, the answer is a site or all of its problems; nothing is written.
     *
     * @param file messages call it as it is given here
     */
    public SiteFileResult read(Path file) {
        Problems problems = new Problems();
        return site(new SiteTree(problems).read(file), problems);
    }

    /**
     * Reads the bytes of a site file; a variant is refused, since nobody knows in which folder its base would be.
     *
     * @param name how messages call the file
     */
    public SiteFileResult read(String name, byte[] bytes) {
        Problems problems = new Problems();
        return site(new SiteTree(problems).read(name, bytes), problems);
    }

    private SiteFileResult site(@Nullable Mapping tree, Problems problems) {
        Site site = tree == null ? null : new SiteReader(table, problems).read(tree);
        // A key written twice leaves a tree to check, and still is a problem.
        if (site == null || !problems.isEmpty()) return new Refused(problems.all());
        return new Readable(site, new SiteWriter(table).digest(site));
    }
}
