package tideover.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import tideover.store.database.StoreRefusal;
import tideover.store.database.StoreRefusal.Reason;

/** Holds a data folder for one process; the system lets go of it when that process ends, however it ends. */
final class FolderLock implements AutoCloseable {
    /**
     * What this process holds. Asking the system would not do: where a process opens and closes a file that it has locked
     * already, some systems let go of the lock.
     */
    private static final Set<Path> HELD = ConcurrentHashMap.newKeySet();

    private final Path folder;
    private final FileChannel channel;

    private FolderLock(Path folder, FileChannel channel) {
        this.folder = folder;
        this.channel = channel;
    }

    static FolderLock take(Path folder) {
        try {
            Path real = folder.toRealPath();
            if (!HELD.add(real)) throw StoreRefusal.of(Reason.IN_USE, folder);
            FolderLock lock = null;
            try {
                lock = lock(real);
            } finally {
                if (lock == null) HELD.remove(real);
            }
            if (lock == null) throw StoreRefusal.of(Reason.IN_USE, folder);
            return lock;
        } catch (IOException e) {
            throw PrivateFiles.refusal(folder, e);
        }
    }

    /** The lock, or nothing where another process has it. */
    private static @Nullable FolderLock lock(Path folder) throws IOException {
        Path file = folder.resolve("tideover.lock");
        PrivateFiles.create(file);
        FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
        if (channel.tryLock() != null) return new FolderLock(folder, channel);
        channel.close();
        return null;
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            HELD.remove(folder);
        }
    }
}
