package edgewright.cli;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Terms;
import edgewright.check.Verdict;
import edgewright.words.Options;
import edgewright.words.PatternWriter;
import edgewright.words.PlainText;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code write}: the pattern in words. */
@Command(name = "write", resourceBundle = "edgewright.cli.usage", mixinStandardHelpOptions = true)
final class WriteCommand implements Callable<Integer> {
    @ParentCommand
    private Root root;

    @Parameters(paramLabel = "CHART", converter = PathConverter.class)
    private Path file;

    @Mixin
    private SizeOption size;

    @Option(names = "--terms", paramLabel = "UK|US", converter = ChoiceConverter.OfTerms.class)
    private Terms terms;

    @Option(
            names = "--counting",
            paramLabel = "stitches|with-chains",
            defaultValue = "stitches",
            converter = ChoiceConverter.OfCounting.class)
    private Counting counting;

    @Option(names = "--draft")
    private boolean draft;

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        Chart chart = ChartInput.read(file);
        Verdict verdict = size.check(chart);
        if (verdict.hasErrors()) {
            new FindingsText(terminal.err(), false).print(file, verdict);
            if (!draft) {
                return ExitStatus.NO;
            }
        }
        Options options =
                new Options(terms == null ? chart.terms() : terms, counting, size.repeats(chart), verdict.hasErrors());
        terminal.out().print(PlainText.of(PatternWriter.write(chart, options)));
        return ExitStatus.DONE;
    }
}
