package edgewright.cli;

import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program's own options, and the list of its commands: one class a command. */
@Command(
        name = "edgewright",
        mixinStandardHelpOptions = true,
        versionProvider = ProgramVersion.class,
        synopsisSubcommandLabel = "COMMAND")
final class RootCommand implements Runnable {
    private static final List<Class<?>> COMMANDS = List.of(
            CheckCommand.class,
            WriteCommand.class,
            PublishCommand.class,
            WorkCommand.class,
            FitCommand.class,
            DrawCommand.class,
            YarnCommand.class,
            FromPictureCommand.class,
            SurroundCommand.class,
            CornersCommand.class,
            LetterCommand.class,
            VaryCommand.class,
            HelpCommand.class);

    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    RootCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    /** The names of the commands, in the order of the help. */
    static List<String> commandNames() {
        return COMMANDS.stream().map(RootCommand::name).toList();
    }

    /**
     * The classes of the commands that these arguments can be about: the one that they begin with, or all. Reading the options
     * of all commands takes longer than a check of a chart.
     */
    static List<Class<?>> commandsFor(List<String> arguments) {
        List<Class<?>> asked = COMMANDS.stream()
                .filter(command -> !arguments.isEmpty() && name(command).equals(arguments.get(0)))
                .toList();
        return asked.isEmpty() || asked.contains(HelpCommand.class) ? COMMANDS : asked;
    }

    private static String name(Class<?> command) {
        return command.getAnnotation(Command.class).name();
    }

    Terminal terminal() {
        return terminal;
    }

    /** Called where options stand alone, without a command. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), terminal.says().text("no-command"));
    }
}
