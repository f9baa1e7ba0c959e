package edgewright.desk.journal;

import edgewright.file.Fingerprint;
import edgewright.file.WatchedFile;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Future;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * Looks at the file of a chart twice a second, on a thread of its own: a folder on a network may keep whoever looks waiting, and
 * what the system reports of changes by itself it does not report of such folders.
 */
final class FileWatcher {
    private static final long PAUSE_MS = 500;

    /** What a look came to. */
    record Look(Path file, Optional<Fingerprint> now) {}

    private final Consumer<Look> told;
    private volatile Optional<WatchedFile> watched = Optional.empty();

    /** @param told of each look, on the thread */
    FileWatcher(ScheduledExecutorService thread, Consumer<Look> told) {
        this.told = told;
        Future<?> unused = thread.scheduleWithFixedDelay(this::look, PAUSE_MS, PAUSE_MS, TimeUnit.MILLISECONDS);
    }

    /** Looks at this file from now on; at none if it is empty. */
    void watch(Optional<Path> file) {
        watched = file.map(WatchedFile::new);
    }

    private void look() {
        watched.ifPresent(file -> told.accept(new Look(file.path(), file.look())));
    }
}
