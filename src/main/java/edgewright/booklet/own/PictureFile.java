package edgewright.booklet.own;

import edgewright.booklet.own.PhotoFault.Reason;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** The bytes of a file that a chart or an imprint names: in its folder or below it, and nowhere else. */
final class PictureFile {
    /** The most bytes of a file: 40 MiB. */
    static final int MOST_BYTES = 40 * 1024 * 1024;

    /** The most pixels of a picture. */
    static final long MOST_PIXELS = 64_000_000;

    private PictureFile() {}

    /** The place of the file, at the end of all links. */
    static Path find(Path folder, String name) throws UnprintableException {
        try {
            Path inside = folder.toAbsolutePath().normalize();
            Path named = inside.resolve(name).normalize();
            if (Path.of(name).isAbsolute() || !named.startsWith(inside) || named.equals(inside)) {
                throw new UnprintableException(Reason.OUTSIDE);
            }
            Path real = named.toRealPath();
            if (!real.startsWith(folder.toRealPath())) {
                throw new UnprintableException(Reason.OUTSIDE);
            }
            return real;
        } catch (InvalidPathException | NoSuchFileException e) {
            throw new UnprintableException(Reason.NOT_FOUND);
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    /** All bytes of the file. */
    static byte[] read(Path folder, String name) throws UnprintableException {
        Path file = find(folder, name);
        // A pipe would keep whoever reads it waiting.
        if (!Files.isRegularFile(file)) {
            throw new UnprintableException(Reason.NO_FILE);
        }
        try (InputStream in = Files.newInputStream(file)) {
            long size = Files.size(file);
            byte[] bytes = size > MOST_BYTES ? new byte[0] : in.readNBytes(MOST_BYTES + 1);
            if (size > MOST_BYTES || bytes.length > MOST_BYTES) {
                throw new UnprintableException(new PhotoFault(Reason.LARGE_FILE, Math.max(size, bytes.length)));
            }
            return bytes;
        } catch (IOException e) {
            throw unreadable(e);
        }
    }

    private static UnprintableException unreadable(IOException e) {
        return new UnprintableException(e instanceof AccessDeniedException ? Reason.NOT_READABLE : Reason.NOT_FOUND);
    }
}
