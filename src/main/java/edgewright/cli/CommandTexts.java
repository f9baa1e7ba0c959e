package edgewright.cli;

import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** What the commands say, from {@code edgewright/cli/messages.properties}. */
final class CommandTexts {
    private static final ResourceBundle MESSAGES = ResourceBundle.getBundle("edgewright.cli.messages", Locale.ROOT);

    private CommandTexts() {}

    static String of(String key, Object... values) {
        return new MessageFormat(MESSAGES.getString(key), Locale.UK).format(values);
    }

    /** The name of a file as it can stand in a line. */
    static String name(Path file) {
        return file.toString().replaceAll("\\p{Cntrl}", "\ufffd");
    }

    /** The text in one line: whatever would break it or steer a terminal is left out. */
    static String oneLine(String text) {
        return text.strip().replaceAll("\\s+", " ").replaceAll("\\p{Cntrl}", "");
    }
}
