package edgewright.file;

import edgewright.file.fault.Fault;
import edgewright.file.fault.FileFault;
import edgewright.file.fault.Problem;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/** What a failure of the file system means to the person whose file it is. */
final class SystemProblems {

    private SystemProblems() {}

    static Problem ofReading(Path file, IOException failure) {
        return of(file, failure, FileFault.Simple.NOT_FOUND, FileFault.Simple.NOT_READABLE);
    }

    static Problem ofWriting(Path file, IOException failure) {
        return of(file, failure, FileFault.Simple.NOT_CREATED, FileFault.Simple.NOT_WRITABLE);
    }

    private static Problem of(Path file, IOException failure, Fault missing, Fault forbidden) {
        if (Files.isDirectory(file)) {
            return Problem.ofFile(FileFault.Simple.IS_A_FOLDER);
        }
        if (failure instanceof AtomicMoveNotSupportedException) {
            return Problem.ofFile(FileFault.Simple.NOT_REPLACED_AT_ONCE);
        }
        if (failure instanceof NoSuchFileException) {
            return Problem.ofFile(missing);
        }
        if (failure instanceof AccessDeniedException) {
            return Problem.ofFile(forbidden);
        }
        return Problem.ofFile(new FileFault.OfTheSystem(reason(failure)));
    }

    /** The system's own words, without the name of the file, which stands in the sentence already. */
    private static String reason(IOException failure) {
        String reason = failure instanceof FileSystemException e ? e.getReason() : failure.getMessage();
        return reason == null ? failure.getClass().getSimpleName() : reason;
    }
}
