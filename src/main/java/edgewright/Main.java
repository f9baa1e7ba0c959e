package edgewright;

import edgewright.cli.Program;
import edgewright.cli.Terminal;
import java.util.List;

/** Starts the program: a command runs at the command line, no command opens the desk. */
public final class Main {

    private Main() {}

    /**
     * Runs the program and, for a command, ends with its exit status.
     *
     * @param arguments the command and its options; none opens the desk
     */
    public static void main(String[] arguments) {
        // Commands never open a window, so a screen that cannot be reached must not stop a picture.
        System.setProperty("java.awt.headless", "true");
        System.exit(Program.run(List.of(arguments), Terminal.ofProcess()));
    }
}
