package edgewright.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/** An empty file that this process holds as a sign that it is at work on something; it goes when it is let go of. */
final class HeldFile {
    private final Path path;
    private final FileChannel channel;
    private final ProcessLock lock;

    private HeldFile(Path path, FileChannel channel, ProcessLock lock) {
        this.path = path;
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * Holds the file of this name, which is made if it is not there.
     *
     * @return empty if it is held already, here or by another process, or where files cannot be held
     */
    static Optional<HeldFile> hold(Path path) throws IOException {
        while (true) {
            if (ProcessLock.isHeldHere(path)) {
                return Optional.empty();
            }
            FileChannel channel = FileChannel.open(path, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            Optional<ProcessLock> lock = ProcessLock.on(path, channel);
            if (lock.isPresent() && Files.exists(path)) {
                return Optional.of(new HeldFile(path, channel, lock.get()));
            }
            lock.ifPresent(ProcessLock::release);
            channel.close();
            if (lock.isEmpty()) {
                return Optional.empty();
            }
            // Between opening and holding it, whoever held it before let go of it and took it away.
        }
    }

    /** Lets go of it and takes it away. */
    void release() {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // An empty file that nobody holds says nothing.
        } finally {
            lock.release();
            closeQuietly();
        }
    }

    private void closeQuietly() {
        try {
            channel.close();
        } catch (IOException e) {
            // Nothing was written to it.
        }
    }
}
