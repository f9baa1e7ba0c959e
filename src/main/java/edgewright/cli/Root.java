package edgewright.cli;

import java.util.List;
import java.util.stream.Stream;
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
        synopsisSubcommandLabel = "COMMAND",
        subcommands = {
            CheckCommand.class,
            WriteCommand.class,
            PublishCommand.class,
            WorkCommand.class,
            FitCommand.class,
            DrawCommand.class,
            YarnCommand.class,
            HelpCommand.class
        })
final class Root implements Runnable {
    private final Terminal terminal;

    @Spec
    private CommandSpec spec;

    Root(Terminal terminal) {
        this.terminal = terminal;
    }

    /** The names of the commands. */
    static List<String> commandNames() {
        return Stream.of(Root.class.getAnnotation(Command.class).subcommands())
                .map(command -> command.getAnnotation(Command.class).name())
                .toList();
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
