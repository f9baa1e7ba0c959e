package edgewright.cli;

import edgewright.texts.English;
import java.io.ByteArrayOutputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine;

/** Runs commands as a person would, in this process, and keeps what they say. */
final class CommandLineHelper {
    private CommandLineHelper() {}

    /**
     * How a command ended.
     *
     * @param status the exit status
     * @param out all of standard output
     * @param err all of standard error
     */
    record Ended(int status, String out, String err) {}

    /** The commands as the library knows them. */
    static CommandLine commands() {
        OutputStream nowhere = OutputStream.nullOutputStream();
        return Program.commands(List.of(), new Terminal(nowhere, nowhere, false, English.LANGUAGE));
    }

    /** Runs a command without colours. */
    static Ended run(Object... arguments) {
        return end(false, arguments);
    }

    /** Runs a command on a screen with colours. */
    static Ended runOnAScreen(Object... arguments) {
        return end(true, arguments);
    }

    private static Ended end(boolean colours, Object[] arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        List<String> words = Arrays.stream(arguments).map(String::valueOf).toList();
        int status = Program.run(words, new Terminal(out, err, colours, English.LANGUAGE));
        return new Ended(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
