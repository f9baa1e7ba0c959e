package edgewright.file;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * A file that is being written beside the one whose place it will take. It is held by a {@link ProcessLock} until then, so that
 * whoever comes later sees whether its writer is still at work or was killed.
 */
final class PartFile implements AutoCloseable {
    private static final String BEGINNING = ".edgewright-";
    private static final String ENDING = ".part";

    /**
     * Where files cannot be held, as on some networks, nobody knows whether a writer lives. No saving takes so long; a part that
     * was begun this much earlier is left from one that was killed.
     */
    private static final Duration STALE = Duration.ofDays(1);

    private final Path path;
    private final FileChannel channel;
    private final Optional<ProcessLock> lock;
    private boolean isPart = true;

    private PartFile(Path path, FileChannel channel, Optional<ProcessLock> lock) {
        this.path = path;
        this.channel = channel;
        this.lock = lock;
    }

    /** Makes an empty file that nobody else writes to. */
    static PartFile claim(Path folder) throws IOException {
        while (true) {
            Path fresh = folder.resolve(BEGINNING + UUID.randomUUID() + ENDING);
            // With the permissions of any new file; a temporary file of the library would be closed to others.
            FileChannel channel = opened(fresh);
            if (channel == null) {
                continue;
            }
            Optional<ProcessLock> lock = ProcessLock.on(fresh, channel);
            if (Files.exists(fresh)) {
                return new PartFile(fresh, channel, lock);
            }
            // Between making and holding it, another saving took it for a leftover.
            lock.ifPresent(ProcessLock::release);
            channel.close();
        }
    }

    private static FileChannel opened(Path fresh) throws IOException {
        try {
            return FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (FileAlreadyExistsException e) {
            return null;
        }
    }

    Path path() {
        return path;
    }

    /** Writes all of it, to the disk itself. */
    void fill(SafeFile.Content content) throws IOException {
        OutputStream out = Channels.newOutputStream(channel);
        content.writeTo(out);
        out.flush();
        channel.force(true);
    }

    /** Puts it in the place of the file with this name. It stays held, or it would be a leftover for a moment. */
    void takeThePlaceOf(Path target) throws IOException {
        Files.move(path, target, StandardCopyOption.ATOMIC_MOVE);
        isPart = false;
    }

    /** Lets go of it. One that has taken no place is taken away. */
    @Override
    public void close() throws IOException {
        try {
            if (isPart) {
                Files.deleteIfExists(path);
            }
        } finally {
            lock.ifPresent(ProcessLock::release);
            channel.close();
        }
    }

    /**
     * Takes away what savings left that were killed.
     *
     * @param now by the clock of the disk
     */
    static void clearLeftovers(Path folder, FileTime now) {
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, BEGINNING + "*" + ENDING)) {
            for (Path part : parts) {
                if (Files.isRegularFile(part, LinkOption.NOFOLLOW_LINKS)) {
                    clear(part, now.toInstant().minus(STALE));
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // The file is written; what lies beside it stands in nobody's way.
        }
    }

    private static void clear(Path part, Instant stale) throws IOException {
        ProcessLock.Writer writer = ProcessLock.writerOf(part);
        if (writer == ProcessLock.Writer.GONE
                || (writer == ProcessLock.Writer.UNKNOWN
                        && Files.getLastModifiedTime(part).toInstant().isBefore(stale))) {
            Files.deleteIfExists(part);
        }
    }
}
