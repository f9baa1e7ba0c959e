package edgewright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program's own options, and the list of its commands: one class a command. */
@Command(
        name = "edgewright",
        resourceBundle = "edgewright.cli.usage",
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

    /** Only to be asked which commands there are. */
    Root() {
        this(null);
    }

    Root(Terminal terminal) {
        this.terminal = terminal;
    }

    Terminal terminal() {
        return terminal;
    }

    /** Called where options stand alone, without a command. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), CommandTexts.of("no.command"));
    }
}
