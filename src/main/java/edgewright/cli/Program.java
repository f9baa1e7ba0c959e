package edgewright.cli;

import static edgewright.texts.Arg.arg;

import edgewright.texts.Language;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;

/** The command line: finds the command, runs it, and says how it ended. */
public final class Program {
    private Program() {}

    /** Whether the arguments are those of a command; if not, they are a chart to open or nothing. */
    public static boolean isCommand(List<String> arguments) {
        if (arguments.isEmpty()) {
            return false;
        }
        boolean isOneName = arguments.size() == 1 && !arguments.get(0).startsWith("-");
        return !isOneName
                || RootCommand.commandNames().contains(arguments.get(0))
                || !ChartInput.looksLikeChart(arguments.get(0));
    }

    /**
     * Runs one command.
     *
     * @return the exit status: 0 done and nothing wrong, 1 done and the answer is 'no', 2 bad input or usage
     */
    public static int run(List<String> arguments, Terminal terminal) {
        CommandLine commands = commands(arguments, terminal);
        commands.setParameterExceptionHandler((mistake, args) ->
                usageMistake(mistake, UsageSentence.of(mistake, List.of(args), terminal.says()), terminal));
        commands.setExecutionStrategy(parsed -> run(parsed, terminal));
        commands.setExecutionExceptionHandler((failure, command, result) -> failed(failure, terminal));
        int status = execute(commands, arguments, terminal);
        return terminal.flush()
                .map(reason -> refuse(terminal, terminal.says().text("output-failed", arg("reason", reason))))
                .orElse(status);
    }

    /** The commands that these arguments can be about, with help in the language of the terminal. */
    static CommandLine commands(List<String> arguments, Terminal terminal) {
        CommandLine commands = new CommandLine(new RootCommand(terminal), new CommandParts(terminal.says()));
        RootCommand.commandsFor(arguments).forEach(commands::addSubcommand);
        commands.setResourceBundle(help(terminal.language()));
        commands.setColorScheme(CommandLine.Help.defaultColorScheme(terminal.colours() ? Ansi.ON : Ansi.OFF));
        commands.setOut(new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8));
        commands.setErr(new PrintWriter(terminal.err(), true, StandardCharsets.UTF_8));
        commands.setUsageHelpWidth(100);
        // A chart may have a name that begins with '@'; the library would read arguments from it.
        commands.setExpandAtFiles(false);
        commands.registerConverter(int.class, new WholeNumberConverter(terminal.says()));
        ChoiceConverter.register(commands, terminal.says());
        return commands;
    }

    /** The help as the library looks it up. The folder says the language, so none is asked of the machine. */
    private static ResourceBundle help(Language language) {
        return ResourceBundle.getBundle("edgewright.language." + language.tag() + ".usage", Locale.ROOT);
    }

    private static int execute(CommandLine commands, List<String> arguments, Terminal terminal) {
        try {
            return commands.execute(arguments.toArray(String[]::new));
        } catch (OutOfMemoryError e) {
            return refuse(terminal, terminal.says().text("memory"));
        } catch (Error e) {
            return refuse(terminal, terminal.says().text("mistake", arg("failure", ScreenText.oneLine(e.toString()))));
        }
    }

    /** Runs the command that was found. What it says of its options is told apart here from what the library says of them. */
    private static int run(ParseResult parsed, Terminal terminal) {
        try {
            return new RunLast().execute(parsed);
        } catch (ParameterException e) {
            return usageMistake(e, UsageSentence.ofRun(e, terminal.says()), terminal);
        }
    }

    private static int usageMistake(ParameterException mistake, String said, Terminal terminal) {
        String command = mistake.getCommandLine().getCommandSpec().qualifiedName();
        return refuse(terminal, terminal.says().text("usage", arg("mistake", said), arg("command", command)));
    }

    private static int failed(Exception failure, Terminal terminal) {
        if (failure instanceof BadInput) {
            return refuse(terminal, failure.getMessage());
        }
        return refuse(
                terminal, terminal.says().text("mistake", arg("failure", ScreenText.oneLine(failure.toString()))));
    }

    private static int refuse(Terminal terminal, String line) {
        terminal.complain(line);
        return ExitStatus.BAD_INPUT;
    }
}
