package edgewright.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** The command line: finds the command, runs it, and says how it ended. */
public final class Program {
    /** How the library begins when a value is wrong; the name of the option says as much. */
    private static final Pattern VALUE_OF = Pattern.compile(
            "^Invalid value for (?:positional parameter at index \\S+ \\((.+?)\\)|option '(\\S+)'(?: \\(.+?\\))?): ");

    private Program() {}

    /** Whether the arguments are those of a command; if not, they are a chart to open or nothing. */
    public static boolean isCommand(List<String> arguments) {
        if (arguments.isEmpty()) {
            return false;
        }
        boolean isOneName = arguments.size() == 1 && !arguments.get(0).startsWith("-");
        return !isOneName
                || new CommandLine(new Root()).getSubcommands().containsKey(arguments.get(0))
                || !ChartInput.looksLikeChart(arguments.get(0));
    }

    /**
     * Runs one command.
     *
     * @return the exit status: 0 done and nothing wrong, 1 done and the answer is 'no', 2 bad input or usage
     */
    public static int run(List<String> arguments, Terminal terminal) {
        CommandLine commands = new CommandLine(new Root(terminal));
        commands.setColorScheme(CommandLine.Help.defaultColorScheme(terminal.colours() ? Ansi.ON : Ansi.OFF));
        commands.setOut(new PrintWriter(terminal.out(), true, StandardCharsets.UTF_8));
        commands.setErr(new PrintWriter(terminal.err(), true, StandardCharsets.UTF_8));
        commands.setUsageHelpWidth(100);
        commands.setParameterExceptionHandler((mistake, args) -> usageMistake(mistake, terminal));
        commands.setExecutionExceptionHandler((failure, command, result) -> failed(failure, terminal));
        int status = execute(commands, arguments, terminal);
        return terminal.flush()
                .map(reason -> refuse(terminal, Texts.of("output.failed", reason)))
                .orElse(status);
    }

    private static int execute(CommandLine commands, List<String> arguments, Terminal terminal) {
        try {
            return commands.execute(arguments.toArray(String[]::new));
        } catch (OutOfMemoryError e) {
            return refuse(terminal, Texts.of("memory"));
        } catch (Error e) {
            return refuse(terminal, Texts.of("mistake", Texts.oneLine(e.toString())));
        }
    }

    private static int usageMistake(ParameterException mistake, Terminal terminal) {
        CommandLine commandLine = mistake.getCommandLine();
        String said = VALUE_OF.matcher(Texts.oneLine(mistake.getMessage()))
                .replaceFirst("$1$2: ")
                .replaceFirst("\\.$", "");
        if (mistake instanceof UnmatchedArgumentException unmatched
                && commandLine.getParent() == null
                && !unmatched.isUnknownOption()) {
            said = Texts.of(
                    "no.such.command",
                    Texts.oneLine(unmatched.getUnmatched().get(0)),
                    String.join(", ", commandLine.getSubcommands().keySet()));
        }
        return refuse(
                terminal, Texts.of("usage", said, commandLine.getCommandSpec().qualifiedName()));
    }

    private static int failed(Exception failure, Terminal terminal) {
        if (failure instanceof BadInput) {
            return refuse(terminal, failure.getMessage());
        }
        return refuse(terminal, Texts.of("mistake", Texts.oneLine(failure.toString())));
    }

    private static int refuse(Terminal terminal, String line) {
        terminal.err().println(line);
        return ExitStatus.BAD_INPUT;
    }
}
