package edgewright.file;

import edgewright.chart.NamedMotif;
import edgewright.file.codec.MotifCodec;
import edgewright.file.fault.Problem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads and writes motif files ({@code *.motif.json}). */
public final class MotifFiles {
    /** The ending that names of motif files have. */
    public static final String ENDING = ".motif.json";

    private static final MotifCodec MOTIF = new MotifCodec();

    /**
     * What came of reading a file.
     *
     * @param motif empty if something is wrong with it
     * @param problems all that is wrong; none if there is a motif
     */
    public record Result(Optional<NamedMotif> motif, List<Problem> problems) {
        public Result {
            problems = List.copyOf(problems);
        }
    }

    private MotifFiles() {}

    /** Reads a motif. Whatever is wrong with the file comes back as problems. */
    public static Result read(Path file) {
        try {
            String text = TextFile.read(file);
            MotifCodec.Decoded decoded = MOTIF.read(TextFile.withoutByteOrderMark(text));
            return new Result(decoded.motif(), decoded.problems());
        } catch (FileProblemException e) {
            return new Result(Optional.empty(), List.of(e.problem()));
        }
    }

    /**
     * Writes a motif in the place of the file with this name, if there is one; see {@link SafeFile}. Its folder is
     * made if it is not there.
     *
     * @throws FileProblemException if it could not be written; the old file is then as it was
     */
    public static void write(Path file, NamedMotif motif) throws FileProblemException {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
        } catch (IOException e) {
            throw new FileProblemException(SystemProblems.ofWriting(file, e), e);
        }
        SafeFile.write(file, out -> out.write(MOTIF.write(motif).getBytes(StandardCharsets.UTF_8)));
    }
}
