package edgewright.cli;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.Hand;
import edgewright.chart.Terms;
import edgewright.words.Options;
import edgewright.words.PatternWriter;
import edgewright.words.PlainText;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** {@code write}: the pattern in words. */
@Command(name = "write", resourceBundle = "edgewright.cli.usage", mixinStandardHelpOptions = true)
final class WriteCommand implements Callable<Integer> {
    @ParentCommand
    private Root root;

    @Mixin
    private ChartArgument argument;

    @Option(names = "--terms", paramLabel = "UK|US", converter = ChoiceConverter.OfTerms.class)
    private Terms terms;

    @Option(
            names = "--counting",
            paramLabel = "stitches|with-chains",
            defaultValue = "stitches",
            converter = ChoiceConverter.OfCounting.class)
    private Counting counting;

    @Option(
            names = "--hand",
            paramLabel = "right|left",
            defaultValue = "right",
            converter = ChoiceConverter.OfHand.class)
    private Hand hand;

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        Optional<ChartArgument.Judged> judged = argument.judged(terminal);
        if (judged.isEmpty()) {
            return ExitStatus.NO;
        }
        Chart chart = judged.get().chart();
        Options options = new Options(
                terms == null ? chart.terms() : terms,
                counting,
                judged.get().repeats(),
                judged.get().isDraft(),
                hand);
        terminal.out().print(PlainText.of(PatternWriter.write(chart, options)));
        return ExitStatus.DONE;
    }
}
