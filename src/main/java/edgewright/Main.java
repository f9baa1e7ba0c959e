package edgewright;

import edgewright.cli.Program;
import edgewright.cli.Terminal;
import edgewright.cli.WithoutScreen;
import java.nio.file.Path;
import java.util.List;

/** Starts the program: a command runs at the command line; without a command the desk opens. */
public final class Main {

    private Main() {}

    /**
     * Runs the program and, for a command, ends with its exit status.
     *
     * @param arguments the command and its options; one chart alone to open it on the desk; none to open the desk
     */
    public static void main(String[] arguments) {
        List<String> words = List.of(arguments);
        // Commands never open a window, so a screen that cannot be reached must not stop a picture.
        System.setProperty("java.awt.headless", "true");
        System.exit(
                Program.isCommand(words)
                        ? Program.run(words, Terminal.ofProcess())
                        : WithoutScreen.run(words, Path.of(""), Terminal.ofProcess()));
    }
}
