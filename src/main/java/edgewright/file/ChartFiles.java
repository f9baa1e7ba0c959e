package edgewright.file;

import edgewright.chart.Chart;
import edgewright.file.codec.ChartReader;
import edgewright.file.fault.FileFault;
import edgewright.file.fault.Problem;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Reads and writes chart files ({@code *.border.json}). */
public final class ChartFiles {
    /** The ending that names of chart files have. */
    public static final String ENDING = ".border.json";

    /** The most bytes of a chart file: 16 MiB. */
    public static final int MOST_BYTES = TextFile.MOST_BYTES;

    private ChartFiles() {}

    /** Reads a chart. Whatever is wrong with the file comes back as problems. */
    public static ReadResult read(Path file) {
        try {
            return read(TextFile.bytes(file));
        } catch (FileProblemException e) {
            return new ReadResult.Problems(List.of(e.problem()));
        }
    }

    private static ReadResult read(byte[] bytes) throws FileProblemException {
        try {
            return ChartText.fromJson(TextFile.text(bytes), Fingerprint.of(bytes));
        } catch (FileProblemException e) {
            // A chart saved in another encoding wants the line; of a picture nobody wants it.
            throw beginsAsChart(bytes) ? e : new FileProblemException(Problem.ofFile(FileFault.Simple.NOT_TEXT), e);
        }
    }

    private static boolean beginsAsChart(byte[] bytes) {
        int start = 0;
        while (start < bytes.length && ChartReader.isBlank((char) bytes[start])) {
            start++;
        }
        return start < bytes.length && bytes[start] == '{';
    }

    /**
     * Writes a chart in the place of the file with this name, if there is one. At every moment there is either the old file
     * or the new one under that name, whole; see {@link SafeFile}.
     *
     * @return the fingerprint of what was written
     * @throws FileProblemException if it could not be written; the old file is then as it was
     */
    public static Fingerprint write(Path file, Chart chart) throws FileProblemException {
        byte[] bytes = ChartText.toJson(chart).getBytes(StandardCharsets.UTF_8);
        if (bytes.length > MOST_BYTES) {
            // It could not be opened again.
            throw new FileProblemException(Problem.ofFile(new FileFault.TooLarge(MOST_BYTES)), null);
        }
        SafeFile.write(file, out -> out.write(bytes));
        return Fingerprint.of(bytes);
    }

    /**
     * The fingerprint of the file as it is now; empty if it is not there or cannot be read. If it is not that of what was
     * read or written last, somebody else has changed the file.
     */
    public static Optional<Fingerprint> fingerprint(Path file) {
        try {
            return Optional.of(Fingerprint.of(TextFile.bytes(file)));
        } catch (FileProblemException e) {
            return Optional.empty();
        }
    }
}
