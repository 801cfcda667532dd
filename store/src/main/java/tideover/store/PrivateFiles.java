package tideover.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;

/** Files and folders that only their owner may open, where the file system knows owners. */
final class PrivateFiles {
    private PrivateFiles() {}

    /** Makes a folder and those above it, where they are missing. */
    static void createFolder(Path folder) {
        try {
            Files.createDirectories(folder, mode(folder, "rwx------"));
        } catch (IOException e) {
            throw StoreRefusal.because(e, Reason.FOLDER_NOT_MADE, folder, reason(e));
        }
    }

    /** Makes an empty file, where it is missing. */
    static void create(Path file) throws IOException {
        try {
            Files.createFile(file, mode(file, "rw-------"));
        } catch (FileAlreadyExistsException e) {
            // Kept with the mode it has.
        }
    }

    private static FileAttribute<?>[] mode(Path path, String mode) {
        return path.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(mode))}
                : new FileAttribute<?>[0];
    }

    /** What the store says to a file that cannot be made or written. */
    static StoreRefusal refusal(Path folder, IOException e) {
        if (!Files.isDirectory(folder)) return StoreRefusal.because(e, Reason.FOLDER_GONE, folder);
        return Files.isWritable(folder)
                ? StoreRefusal.because(e, Reason.WRITE_FAILED, folder, reason(e))
                : StoreRefusal.because(e, Reason.FOLDER_READ_ONLY, folder);
    }

    /** Waits until what was written to a file is on the disk. */
    static void sync(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    /** Waits until the names in a folder are on the disk, where the system lets a folder be asked for that. */
    static void syncNames(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems open no folder; they write names down in order.
        }
    }

    private static String reason(IOException e) {
        String said = e instanceof FileSystemException system ? system.getReason() : e.getMessage();
        return said == null ? e.getClass().getSimpleName() : said;
    }
}
