package tideover.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;

/** Holds a data folder for one process; the system lets go of it when that process ends, however it ends. */
final class FolderLock implements AutoCloseable {
    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    static FolderLock take(Path folder) {
        FileChannel channel = null;
        try {
            PrivateFiles.create(folder.resolve("tideover.lock"));
            channel = FileChannel.open(folder.resolve("tideover.lock"), StandardOpenOption.WRITE);
            if (tryLock(channel) != null) return new FolderLock(channel);
            channel.close();
        } catch (IOException e) {
            throw PrivateFiles.refusal(folder, e);
        }
        throw StoreRefusal.of(Reason.IN_USE, folder);
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException e) {
            // Held by this very process.
            return null;
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
