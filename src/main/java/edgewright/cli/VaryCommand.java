package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.assist.vary.Variations;
import edgewright.chart.Chart;
import edgewright.check.Checker;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code vary}: other charts on the repeat and the corners of one. */
@Command(name = "vary", mixinStandardHelpOptions = true)
final class VaryCommand implements Callable<Integer> {
    private static final int MOST = 100;

    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CHART", descriptionKey = "CHART", converter = PathConverter.class)
    private Path file;

    @Option(names = "--to", required = true, paramLabel = "FOLDER", converter = PathConverter.class)
    private Path to;

    @Option(names = "--count", paramLabel = "N", defaultValue = "12")
    private int wanted;

    @Option(names = "--seed", paramLabel = "N", defaultValue = "1")
    private int seed;

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        WholeNumberConverter.requireBetween(wanted, "--count", 1, MOST, spec, terminal.says());
        OutputFolder folder = new OutputFolder(to, file, terminal);
        Chart chart = ChartInput.read(file, terminal);
        if (!FindingsText.onErr(terminal).isSound(file, Checker.check(chart))) {
            return ExitStatus.NO;
        }
        List<Chart> variations = Variations.of(chart, wanted, seed, () -> false);
        for (Path written : folder.write(variations, "variation")) {
            terminal.sayWritten(terminal.says().text("write-done", arg("file", ScreenText.name(written))));
        }
        if (variations.size() < wanted) {
            terminal.say(
                    terminal.says().text("vary-fewer", count("found", variations.size()), count("wanted", wanted)));
        }
        return ExitStatus.DONE;
    }
}
