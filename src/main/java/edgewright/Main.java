package edgewright;

import edgewright.cli.Program;
import edgewright.cli.Terminal;
import edgewright.cli.WithoutScreen;
import edgewright.desk.Desk;
import edgewright.texts.Language;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Starts the program: a command runs at the command line; without a command the desk opens. */
public final class Main {

    private Main() {}

    /**
     * Runs the program and, for a command, ends with its exit status.
     *
     * @param arguments the command and its options; one chart alone to open it on the desk; none to open
     *     the desk on the sample chart, where it is at hand, or on a new one
     */
    public static void main(String[] arguments) {
        Language language = Language.of("en");
        List<String> words = List.of(arguments);
        if (Program.isCommand(words)) {
            // Commands never open a window, so a screen that cannot be reached must not stop a picture.
            System.setProperty("java.awt.headless", "true");
            System.exit(Program.run(words, Terminal.ofProcess(language)));
        }
        Path folder = Path.of("");
        if (!Desk.hasScreen()) {
            System.exit(WithoutScreen.run(words, folder, Terminal.ofProcess(language)));
        }
        Path sample = WithoutScreen.sample(folder);
        Desk.open(
                words.isEmpty() ? Optional.of(sample).filter(Files::exists) : Optional.of(Path.of(words.get(0))),
                language);
    }
}
