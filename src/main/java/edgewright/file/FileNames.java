package edgewright.file;

import edgewright.chart.CleanText;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.text.Normalizer.Form;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Names for files that are named after a title, which any system takes. */
public final class FileNames {
    /** Most systems take 255 bytes; the rest is for endings and for what a person adds. */
    public static final int MOST_BYTES = 160;

    /** Letters with the marks on them, and digits, of any script. */
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{M}\\p{Nd}]+");

    /**
     * Names that Windows keeps for devices, with any ending: https://learn.microsoft.com/windows/win32/fileio/naming-a-file.
     */
    private static final Pattern OF_A_DEVICE = Pattern.compile("con|prn|aux|nul|com[0-9]|lpt[0-9]");

    private FileNames() {}

    /**
     * A title as the name of a file without an ending: its letters and digits in small, accents put together with their
     * letters, hyphens between the words, cut off behind a whole word where it would be too long.
     *
     * @return empty if the title has neither letters nor digits
     */
    public static Optional<String> of(String title) {
        String small = Normalizer.normalize(CleanText.oneLine(title), Form.NFC).toLowerCase(Locale.ROOT);
        // Small letters may come apart again.
        String name = trimmed(
                BETWEEN_WORDS.matcher(Normalizer.normalize(small, Form.NFC)).replaceAll("-"));
        String fitting = shortened(name);
        if (fitting.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(OF_A_DEVICE.matcher(fitting).matches() ? fitting + "-chart" : fitting);
    }

    /**
     * A name beside a chart file that no file has: {@code reed-bank-WORD.border.json}, then {@code reed-bank-WORD-2.border.json}
     * and so on.
     */
    public static Path beside(Path chart, String word) {
        String name = chart.getFileName().toString();
        String stem =
                name.endsWith(ChartFiles.ENDING) ? name.substring(0, name.length() - ChartFiles.ENDING.length()) : name;
        Path free = chart.resolveSibling(stem + "-" + word + ChartFiles.ENDING);
        for (int i = 2; Files.exists(free); i++) {
            free = chart.resolveSibling(stem + "-" + word + "-" + i + ChartFiles.ENDING);
        }
        return free;
    }

    private static String shortened(String name) {
        if (bytes(name) <= MOST_BYTES) {
            return name;
        }
        int end = name.length();
        while (bytes(name.substring(0, end)) > MOST_BYTES) {
            end = name.offsetByCodePoints(end, -1);
        }
        int word = name.lastIndexOf('-', end);
        return trimmed(name.substring(0, word > 0 ? word : end));
    }

    private static String trimmed(String name) {
        return name.replaceAll("^-+|-+$", "");
    }

    private static int bytes(String name) {
        return name.getBytes(StandardCharsets.UTF_8).length;
    }
}
