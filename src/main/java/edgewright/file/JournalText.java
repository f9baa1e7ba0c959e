package edgewright.file;

import edgewright.file.fault.FileFault;
import edgewright.file.fault.Problem;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * An entry of a journal as the text of its file: a first line that says what it is, lines of a name and a value, an empty line,
 * and the chart as in a chart file. The fingerprint of the chart stands before it, so half a file is never taken for a whole one.
 */
final class JournalText {
    static final String FIRST_LINE = "edgewright journal 1";

    private static final String FILE = "file";
    private static final String SAVED = "saved";
    private static final String EDITS = "edits";
    private static final String AT = "at";
    private static final String CHART = "chart";

    private JournalText() {}

    static byte[] bytes(JournalEntry entry) {
        String chart = ChartText.toJson(entry.chart());
        StringBuilder text = new StringBuilder(FIRST_LINE).append('\n');
        entry.file().ifPresent(file -> line(text, FILE, file.toUri().toString()));
        entry.saved().ifPresent(saved -> line(text, SAVED, saved.sha256()));
        line(text, EDITS, String.valueOf(entry.edits()));
        line(text, AT, entry.at().toString());
        line(text, CHART, fingerprint(chart));
        return text.append('\n').append(chart).toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void line(StringBuilder text, String name, String value) {
        text.append(name).append(' ').append(value).append('\n');
    }

    private static String fingerprint(String chart) {
        return Fingerprint.of(chart.getBytes(StandardCharsets.UTF_8)).sha256();
    }

    /**
     * The entry that these bytes are.
     *
     * @throws FileProblemException if they are no journal, or not the whole of one
     */
    static JournalEntry entry(byte[] bytes) throws FileProblemException {
        String text = TextFile.text(bytes);
        if (!text.startsWith(FIRST_LINE + "\n")) {
            throw refused(FileFault.Simple.NOT_A_JOURNAL, null);
        }
        int end = text.indexOf("\n\n");
        if (end < 0) {
            throw refused(FileFault.Simple.JOURNAL_NOT_WHOLE, null);
        }
        String chart = text.substring(end + 2);
        try {
            Map<String, String> lines =
                    lines(text.substring(FIRST_LINE.length() + 1, Math.max(end, FIRST_LINE.length() + 1)));
            if (!fingerprint(chart).equals(lines.get(CHART))
                    || !(ChartText.fromJson(chart) instanceof ReadResult.Read read)) {
                throw refused(FileFault.Simple.JOURNAL_NOT_WHOLE, null);
            }
            return new JournalEntry(
                    Optional.ofNullable(lines.get(FILE)).map(uri -> Path.of(URI.create(uri))),
                    Optional.ofNullable(lines.get(SAVED)).map(Fingerprint::new),
                    Integer.parseInt(lines.getOrDefault(EDITS, "")),
                    Instant.parse(lines.getOrDefault(AT, "")),
                    read.chart());
        } catch (IllegalArgumentException | DateTimeParseException | FileSystemNotFoundException e) {
            throw refused(FileFault.Simple.JOURNAL_NOT_WHOLE, e);
        }
    }

    private static Map<String, String> lines(String head) {
        Map<String, String> lines = new LinkedHashMap<>();
        head.lines().forEach(line -> {
            int blank = line.indexOf(' ');
            lines.put(blank < 0 ? line : line.substring(0, blank), line.substring(blank + 1));
        });
        return lines;
    }

    private static FileProblemException refused(FileFault fault, Exception cause) {
        return new FileProblemException(Problem.ofFile(fault), cause);
    }
}
