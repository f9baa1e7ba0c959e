package edgewright.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.util.Optional;

/**
 * A file that is looked at again and again, cheaply: it is read only when its length, its time or its place on the disk is
 * another than at the last look. One thread at a time.
 */
public final class WatchedFile {
    /** What can be seen of a file without reading it. */
    private record Outside(long bytes, FileTime changed, Optional<Object> place) {}

    private final Path file;
    private Optional<Outside> lastSeen = Optional.empty();
    private Optional<Fingerprint> content = Optional.empty();

    public WatchedFile(Path file) {
        this.file = file;
    }

    public Path path() {
        return file;
    }

    /** What the file holds now; empty while it is not there or cannot be read. */
    public Optional<Fingerprint> look() {
        Optional<Outside> now = outside();
        if (!now.equals(lastSeen)) {
            lastSeen = now;
            content = now.isEmpty() ? Optional.empty() : ChartFiles.fingerprint(file);
            if (now.isPresent() && !outside().equals(now)) {
                // It is being written; what was read may be half of it.
                lastSeen = Optional.empty();
            }
        }
        return content;
    }

    private Optional<Outside> outside() {
        try {
            BasicFileAttributes seen = Files.readAttributes(file, BasicFileAttributes.class);
            return Optional.of(new Outside(seen.size(), seen.lastModifiedTime(), Optional.ofNullable(seen.fileKey())));
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
