package edgewright.cli;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;

/**
 * Where, and in which language, a command says what it has to say. Always in UTF-8, whatever the system prefers, since yarns and charts have names
 * in any script.
 */
public final class Terminal {
    private final Output output;
    private final PrintStream out;
    private final PrintStream err;
    private final boolean colours;
    private final Language language;
    private final Messages says;

    /**
     * A terminal over two streams; none is closed.
     *
     * @param colours whether the first is a screen that knows colours
     */
    public Terminal(OutputStream out, OutputStream err, boolean colours, Language language) {
        this.output = new Output(out);
        this.out = new PrintStream(output, false, StandardCharsets.UTF_8);
        this.err = new PrintStream(err, true, StandardCharsets.UTF_8);
        this.colours = colours;
        this.language = language;
        this.says = language.messages("cli");
    }

    /** The terminal of this process, where the program speaks that language. */
    public static Terminal ofProcess(Language language) {
        return new Terminal(
                new FileOutputStream(FileDescriptor.out),
                new FileOutputStream(FileDescriptor.err),
                wantsColours(isScreen(), System.getenv()),
                language);
    }

    @SuppressWarnings("SystemConsoleNull") // what the advice is about is done in the lines after it
    private static boolean isScreen() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            // Since Java 22 there is a console even where there is no screen, and this method that tells.
            return (Boolean) Console.class.getMethod("isTerminal").invoke(console);
        } catch (ReflectiveOperationException e) {
            return true;
        }
    }

    /**
     * Whether to use colours: only on a screen, and not if the person has asked for none.
     *
     * @param screen whether answers go to a screen
     */
    static boolean wantsColours(boolean screen, Map<String, String> environment) {
        // https://no-color.org: when present and not an empty string (regardless of its value), no colour.
        boolean refused = !environment.getOrDefault("NO_COLOR", "").isEmpty();
        return screen && !refused && !environment.getOrDefault("TERM", "").equals("dumb");
    }

    /** Says a line of the answer, made safe for a screen. */
    void say(String line) {
        out.println(ScreenText.safe(line));
    }

    /** Gives an answer of several lines as it is, but for what would steer a screen. */
    void give(String text) {
        out.print(ScreenText.safe(text));
    }

    /** Says a line about what went wrong, made safe for a screen. */
    void complain(String line) {
        err.println(ScreenText.safe(line));
    }

    /**
     * Says that a file is written. The file is the answer, so it is no failure if nobody is there to be told of it.
     */
    void sayWritten(String line) {
        out.flush();
        IOException before = output.failure;
        say(line);
        out.flush();
        output.failure = before;
    }

    /** For answers that are not lines of text for people, and for what is coloured. */
    PrintStream out() {
        return out;
    }

    /** For what went wrong. Never coloured, since nothing tells whether it goes to a screen. */
    PrintStream err() {
        return err;
    }

    /** In which commands speak. */
    Language language() {
        return language;
    }

    /** What commands say in their own words. */
    Messages says() {
        return says;
    }

    /** Whether answers may be coloured. */
    boolean colours() {
        return colours;
    }

    /**
     * Sends off what was said, and tells why it did not arrive if it did not. Whoever reads only the first lines of an answer
     * and leaves is no failure.
     */
    Optional<String> flush() {
        out.flush();
        return output.failure == null
                        || String.valueOf(output.failure.getMessage()).contains("Broken pipe")
                ? Optional.empty()
                : Optional.of(String.valueOf(output.failure.getMessage()));
    }

    /** Remembers why it failed, which a print stream does not. */
    private static final class Output extends OutputStream {
        private final OutputStream to;
        private IOException failure;

        Output(OutputStream to) {
            this.to = to;
        }

        @Override
        public void write(int b) throws IOException {
            write(new byte[] {(byte) b}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int start, int length) throws IOException {
            try {
                to.write(bytes, start, length);
            } catch (IOException e) {
                failure = e;
                throw e;
            }
        }
    }
}
