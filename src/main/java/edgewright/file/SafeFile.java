package edgewright.file;

import edgewright.file.fault.FileFault;
import edgewright.file.fault.Problem;
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
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.time.Duration;
import java.time.Instant;

/**
 * Puts a new file in the place of an old one without a moment in which there is neither: the new file is written beside the
 * old one, flushed to the disk, and then renamed over it.
 *
 * <p>Symbolic links are followed, so it is the file that a link leads to that is replaced. Permissions are kept, owner and
 * group as far as the system allows. A file that has other names (hard links) is replaced under this name only. A file that
 * may not be written to is left alone, although the folder would allow to replace it.
 */
public final class SafeFile {
    /** Links that lead to links are followed this far, as on Linux. */
    private static final int MOST_LINKS = 40;

    /** Names of files that are being written, or were when the program was killed. */
    private static final String PARTS = ".edgewright-*.part";

    /** No saving takes so long; a file that was begun this much earlier is left from one that was killed. */
    private static final Duration STALE = Duration.ofDays(1);

    private final Rename rename;

    /** What goes into the file. */
    public interface Content {
        /** Writes all of it; whoever calls closes the stream. A failure leaves the old file as it was. */
        void writeTo(OutputStream out) throws IOException;
    }

    /** The last step, which tests let fail. */
    interface Rename {
        void rename(Path from, Path to) throws IOException;
    }

    SafeFile(Rename rename) {
        this.rename = rename;
    }

    /**
     * Writes the file.
     *
     * @throws FileProblemException if it could not be written; the old file is then as it was, and nothing is left beside it
     */
    public static void write(Path file, Content content) throws FileProblemException {
        new SafeFile((from, to) -> Files.move(from, to, StandardCopyOption.ATOMIC_MOVE)).replace(file, content);
    }

    void replace(Path file, Content content) throws FileProblemException {
        try {
            Path target = target(file);
            refuseWhatCannotBeReplaced(target);
            Path folder = target.toAbsolutePath().getParent();
            Path fresh = claim(folder);
            FileTime begun = Files.getLastModifiedTime(fresh);
            boolean done = false;
            try {
                fill(fresh, content);
                keepAttributes(target, fresh);
                rename.rename(fresh, target);
                done = true;
            } finally {
                if (!done) {
                    Files.deleteIfExists(fresh);
                }
            }
            flushFolder(folder);
            clearLeftovers(folder, begun);
        } catch (FileProblemException e) {
            throw e;
        } catch (IOException e) {
            throw new FileProblemException(SystemProblems.ofWriting(file, e), e);
        }
    }

    /** The file itself, at the end of all links. It need not be there. */
    private static Path target(Path file) throws IOException {
        Path target = file;
        for (int i = 0; Files.isSymbolicLink(target); i++) {
            if (i == MOST_LINKS) {
                throw new IOException("too many levels of symbolic links");
            }
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        return target;
    }

    private static void refuseWhatCannotBeReplaced(Path target) throws FileProblemException {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || Files.isDirectory(target)) {
            throw new FileProblemException(Problem.ofFile(FileFault.Simple.IS_A_FOLDER), null);
        }
        if (!Files.isDirectory(folder)) {
            throw new FileProblemException(Problem.ofFile(new FileFault.NoFolder(folder.toString())), null);
        }
        if (Files.exists(target) && !Files.isRegularFile(target)) {
            throw new FileProblemException(Problem.ofFile(FileFault.Simple.NOT_A_FILE), null);
        }
        if (Files.exists(target) && !Files.isWritable(target)) {
            throw new FileProblemException(Problem.ofFile(FileFault.Simple.NOT_WRITABLE), null);
        }
    }

    /** Makes an empty file that nobody else writes to. */
    private static Path claim(Path folder) throws IOException {
        for (int i = 0; ; i++) {
            Path fresh = folder.resolve(".edgewright-" + i + ".part");
            try {
                // With the permissions of any new file; a temporary file of the library would be closed to others.
                return Files.createFile(fresh);
            } catch (FileAlreadyExistsException e) {
                // Another saving has it, or had it when it was killed. There is always a next name.
            }
        }
    }

    /** Takes away what savings left that were killed long before this one began, by the clock of the disk. */
    private static void clearLeftovers(Path folder, FileTime begun) {
        Instant stale = begun.toInstant().minus(STALE);
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, PARTS)) {
            for (Path part : parts) {
                boolean isOurs = Files.isRegularFile(part, LinkOption.NOFOLLOW_LINKS);
                if (isOurs && Files.getLastModifiedTime(part).toInstant().isBefore(stale)) {
                    Files.deleteIfExists(part);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            // The file is written; what lies beside it stands in nobody's way.
        }
    }

    private static void fill(Path fresh, Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
            OutputStream out = Channels.newOutputStream(channel);
            content.writeTo(out);
            out.flush();
            channel.force(true);
        }
    }

    private static void keepAttributes(Path target, Path fresh) throws IOException {
        PosixFileAttributeView from = Files.getFileAttributeView(target, PosixFileAttributeView.class);
        PosixFileAttributeView to = Files.getFileAttributeView(fresh, PosixFileAttributeView.class);
        if (from == null || to == null || !Files.exists(target)) {
            return;
        }
        PosixFileAttributes old = from.readAttributes();
        try {
            to.setGroup(old.group());
            to.setOwner(old.owner());
        } catch (IOException | UnsupportedOperationException e) {
            // Only an administrator may give files away. The new file then belongs to whoever wrote it.
        }
        // After the owner, since a change of owner can take permissions away.
        to.setPermissions(old.permissions());
    }

    /** Makes the renaming itself outlast a power cut, where the system can do that. */
    private static void flushFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException | UnsupportedOperationException e) {
            // Some systems do not open folders. The file is whole there too, old or new.
        }
    }
}
