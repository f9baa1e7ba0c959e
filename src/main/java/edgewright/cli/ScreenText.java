package edgewright.cli;

import edgewright.chart.CleanText;
import java.nio.file.Path;

/** Text made safe for a line and for a screen. */
final class ScreenText {
    private static final int UNKNOWN = 0xfffd;

    private ScreenText() {}

    /** The name of a file as it can stand in a line. */
    static String name(Path file) {
        return safe(file.toString().replace('\n', (char) UNKNOWN));
    }

    /** The text in one line: whatever would break it or steer a terminal is left out. */
    static String oneLine(String text) {
        return text.strip()
                .replaceAll("\\s+", " ")
                .codePoints()
                .filter(c -> !CleanText.steers(c))
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString();
    }

    /**
     * The text as a terminal shows it and is not steered by it. All that commands say to people goes through here, once: a
     * control or a mark of writing direction, but for the end of a line, becomes the sign for a character that is not known.
     */
    static String safe(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints()
                .map(c -> c != '\n' && CleanText.steers(c) ? UNKNOWN : c)
                .forEach(safe::appendCodePoint);
        return safe.toString();
    }
}
