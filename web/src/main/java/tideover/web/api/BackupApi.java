package tideover.web.api;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.springframework.core.io.InputStreamResource;
import org.springframework.core.io.Resource;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.RestController;
import tideover.store.Store;

/** Everything that is kept as one file, copied while the workbench runs. */
@RestController
final class BackupApi {
    private final Store store;

    BackupApi(Store store) {
        this.store = store;
    }

    @GetMapping("/api/backup")
    ResponseEntity<Resource> backup() throws IOException {
        // Its owner's alone, as everything that Java puts there.
        Path folder = Files.createTempDirectory("tideover-backup");
        Path file = folder.resolve("backup.db");
        try {
            store.backup(file);
            // Some systems take the file away as soon as it is open.
            long size = Files.size(file);
            InputStream content = Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE);
            return ResponseEntity.ok()
                    .contentType(MediaType.APPLICATION_OCTET_STREAM)
                    .contentLength(size)
                    .body(new InputStreamResource(new Emptying(content, folder)));
        } catch (RuntimeException | IOException e) {
            Files.deleteIfExists(file);
            Files.deleteIfExists(folder);
            throw e;
        }
    }

    /** Takes the folder away as well, once the file in it is gone. */
    private static final class Emptying extends FilterInputStream {
        private final Path folder;

        Emptying(InputStream content, Path folder) {
            super(content);
            this.folder = folder;
        }

        @Override
        public void close() throws IOException {
            super.close();
            Files.deleteIfExists(folder);
        }
    }
}
