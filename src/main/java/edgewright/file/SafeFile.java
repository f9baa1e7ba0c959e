package edgewright.file;

import edgewright.file.fault.FileFault;
import edgewright.file.fault.Problem;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;

/**
 * Puts a new file in the place of an old one without a moment in which there is neither: the new file is written beside the
 * old one, flushed to the disk, and then renamed over it.
 *
 * <p>What a saving that was killed left beside the file is taken away by the next one that comes to its end. A folder in which
 * nothing can be replaced in one step is refused.
 *
 * <p>Symbolic links are followed, so it is the file that a link leads to that is replaced. Permissions are kept, owner and
 * group as far as the system allows. A file that has other names (hard links) is replaced under this name only. A file that
 * may not be written to is left alone, although the folder would allow to replace it.
 */
public final class SafeFile {
    /** Links that lead to links are followed this far, as on Linux. */
    private static final int MOST_LINKS = 40;

    private SafeFile() {}

    /** What goes into the file. */
    public interface Content {
        /** Writes all of it; whoever calls closes the stream. A failure leaves the old file as it was. */
        void writeTo(OutputStream out) throws IOException;
    }

    /**
     * Writes the file.
     *
     * @throws FileProblemException if it could not be written; the old file is then as it was, and nothing is left beside it
     */
    public static void write(Path file, Content content) throws FileProblemException {
        try {
            Path target = target(file);
            refuseWhatCannotBeReplaced(target);
            // One folder has one name here, or a part held under one of its names could be taken for a leftover.
            Path folder = target.toAbsolutePath().getParent().toRealPath();
            FileTime begun;
            try (PartFile part = PartFile.claim(folder)) {
                begun = Files.getLastModifiedTime(part.path());
                part.fill(content);
                keepAttributes(target, part.path());
                part.takeThePlaceOf(target);
            }
            flushFolder(folder);
            PartFile.clearLeftovers(folder, begun);
        } catch (FileProblemException e) {
            throw e;
        } catch (IOException e) {
            throw new FileProblemException(SystemProblems.ofWriting(file, e), e);
        }
    }

    /**
     * Gives a file a longer name, under which it is kept.
     *
     * @return its name from now on, which is the old one if the system does not allow to change it
     */
    static Path setAside(Path file, String ending) {
        Path aside = file.resolveSibling(file.getFileName() + ending);
        try {
            return Files.move(file, aside, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            return file;
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
