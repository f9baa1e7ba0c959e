package edgewright.cli;

import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.words.Options;
import edgewright.words.PatternWriter;
import edgewright.words.PlainText;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;

/** {@code write}: the pattern in words. */
@Command(name = "write", resourceBundle = "edgewright.cli.usage", mixinStandardHelpOptions = true)
final class WriteCommand implements Callable<Integer> {
    @ParentCommand
    private Root root;

    @Mixin
    private ChartArgument argument;

    @Mixin
    private WordingOption wording;

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        Optional<ChartArgument.Judged> judged = argument.judged(terminal);
        if (judged.isEmpty()) {
            return ExitStatus.NO;
        }
        Chart chart = judged.get().chart();
        for (Terms terms : wording.terms(chart).inTurn()) {
            Options options = new Options(
                    terms,
                    wording.counting(),
                    judged.get().repeats(),
                    judged.get().isDraft(),
                    wording.hand());
            terminal.out().print(PlainText.of(PatternWriter.write(chart, options)));
        }
        return ExitStatus.DONE;
    }
}
