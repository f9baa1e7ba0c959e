package edgewright.file;

import edgewright.chart.Imprint;
import edgewright.file.codec.ImprintCodec;
import edgewright.file.codec.ImprintReader;
import edgewright.file.fault.FileFault;
import edgewright.file.fault.Problem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/** Reads and writes imprint files ({@code *.imprint.json}). */
public final class ImprintFiles {
    /** The ending that names of imprint files have. */
    public static final String ENDING = ".imprint.json";

    private static final ImprintCodec IMPRINT = new ImprintCodec();

    /** What came of reading a file. */
    public sealed interface Result {}

    /** The imprint in it. */
    public record Read(Imprint imprint) implements Result {}

    /** All that is wrong with it; at least one. */
    public record Problems(List<Problem> problems) implements Result {
        public Problems {
            problems = List.copyOf(problems);
        }
    }

    private ImprintFiles() {}

    /** Reads an imprint. Whatever is wrong with the file comes back as problems. */
    public static Result read(Path file) {
        try {
            String text = TextFile.read(file);
            ImprintReader.Decoded decoded = ImprintReader.read(TextFile.withoutByteOrderMark(text));
            return decoded.imprint().<Result>map(Read::new).orElseGet(() -> new Problems(decoded.problems()));
        } catch (FileProblemException e) {
            boolean another = e.problem().fault() == FileFault.Simple.NOT_UTF8;
            return new Problems(List.of(another ? ImprintReader.ofAnotherKind() : e.problem()));
        }
    }

    /** The text of the file for this imprint, a member a line. */
    public static String toJson(Imprint imprint) {
        return IMPRINT.write(imprint);
    }

    /**
     * Writes an imprint in the place of the file with this name, if there is one; see {@link SafeFile}.
     *
     * @throws FileProblemException if it could not be written; the old file is then as it was
     */
    public static void write(Path file, Imprint imprint) throws FileProblemException {
        SafeFile.write(file, out -> out.write(toJson(imprint).getBytes(StandardCharsets.UTF_8)));
    }
}
