package edgewright.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Holds a file for as long as this process lives, so that others can see that it does: the system lets go of it however the
 * process ends.
 *
 * <p>Whoever in a process closes a file that the process holds lets go of it, by the law of such locks
 * (https://pubs.opengroup.org/onlinepubs/9699919799/functions/fcntl.html). So a file held here is never opened again here.
 */
final class ProcessLock {
    /** Where a file is held: far behind its end, since on Windows nobody else can read what is held. */
    private static final long BYTE = Long.MAX_VALUE - 1;

    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final FileLock lock;

    /** Who holds a file. */
    enum Writer {
        /** A process that is alive, this one or another. */
        ALIVE,
        /** None: whoever held it has ended. */
        GONE,
        /** The system cannot say. */
        UNKNOWN
    }

    private ProcessLock(Path file, FileLock lock) {
        this.file = file;
        this.lock = lock;
    }

    /** Holds this file, which is open for writing there; empty if another holds it, or where files cannot be held. */
    static Optional<ProcessLock> on(Path file, FileChannel channel) {
        Path name = name(file);
        if (!HELD_HERE.add(name)) {
            return Optional.empty();
        }
        Optional<ProcessLock> held = Optional.empty();
        try {
            held = Optional.ofNullable(channel.tryLock(BYTE, 1, false)).map(lock -> new ProcessLock(name, lock));
        } catch (IOException | OverlappingFileLockException | UnsupportedOperationException e) {
            // Some networks hold no files. The file itself can be written there all the same.
        }
        if (held.isEmpty()) {
            HELD_HERE.remove(name);
        }
        return held;
    }

    /** Lets go of it; whoever opened the file closes it. */
    void release() {
        try {
            lock.release();
        } catch (IOException e) {
            // It goes with the closing of the file, at the latest with the process.
        } finally {
            HELD_HERE.remove(file);
        }
    }

    /** Whether this process holds it. */
    static boolean isHeldHere(Path file) {
        return HELD_HERE.contains(name(file));
    }

    /** Whether the process that held this file is still alive. */
    static Writer writerOf(Path file) throws IOException {
        if (isHeldHere(file)) {
            return Writer.ALIVE;
        }
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            FileLock lock = channel.tryLock(BYTE, 1, false);
            return lock == null ? Writer.ALIVE : Writer.GONE;
        } catch (NoSuchFileException e) {
            return Writer.GONE;
        } catch (OverlappingFileLockException e) {
            return Writer.ALIVE;
        } catch (IOException | UnsupportedOperationException e) {
            return Writer.UNKNOWN;
        }
    }

    private static Path name(Path file) {
        return file.toAbsolutePath().normalize();
    }
}
