package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.assist.stack.Surround;
import edgewright.assist.stack.SurroundAnswer;
import edgewright.assist.stack.SurroundAnswer.Change;
import edgewright.assist.stack.SurroundAnswer.Closes;
import edgewright.assist.stack.SurroundAnswer.NeverCloses;
import edgewright.assist.stack.SurroundAnswer.TooLarge;
import edgewright.assist.stack.SurroundSentences;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.check.Checker;
import edgewright.fit.SideMultiple;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code surround}: one border worked round another, as one chart. */
@Command(name = "surround", mixinStandardHelpOptions = true)
final class SurroundCommand implements Callable<Integer> {
    @ParentCommand
    private RootCommand root;

    @Parameters(index = "0", paramLabel = "INNER", descriptionKey = "INNER", converter = PathConverter.class)
    private Path innerFile;

    @Parameters(index = "1", paramLabel = "OUTER", descriptionKey = "OUTER", converter = PathConverter.class)
    private Path outerFile;

    @Option(names = "--to", required = true, paramLabel = "CHART", converter = PathConverter.class)
    private Path to;

    @Option(names = "--json")
    private boolean json;

    /** The JSON document. */
    private record Answer(boolean closes, int rounds, int repeat, Base base, int between) {}

    /** The stitches of a side in the base round, corner chains not counted. */
    private record Base(int multiple, int plus) {}

    /** The JSON document where it does not work. */
    private record No(boolean closes, String reason, List<Possible> changes) {}

    /** A corner section with another number of stitches in its base round. */
    private record Possible(String chart, String section, int now, int then, int between) {}

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        OutputFile output = OutputFile.ofChart(to, List.of(innerFile, outerFile), terminal);
        Chart inner = ChartInput.read(innerFile, terminal);
        Chart outer = ChartInput.read(outerFile, terminal);
        FindingsText findings = FindingsText.onErr(terminal);
        boolean innerIsSound = findings.isSound(innerFile, Checker.check(inner));
        boolean outerIsSound = findings.isSound(outerFile, Checker.check(outer));
        if (!innerIsSound || !outerIsSound) {
            return ExitStatus.NO;
        }
        SurroundSentences sentences = new SurroundSentences(terminal.language());
        SurroundAnswer answer = Surround.of(inner, outer, sentences.heading(inner, outer));
        if (answer instanceof TooLarge large) {
            throw new BadInput(terminal.says()
                    .text(
                            "made-refused",
                            arg("file", ScreenText.name(outerFile)),
                            arg("mistake", sentences.of(large))));
        }
        if (answer instanceof NeverCloses never) {
            print(never, sentences);
            return ExitStatus.NO;
        }
        Closes closes = (Closes) answer;
        output.write(closes.chart());
        print(closes, sentences);
        return ExitStatus.DONE;
    }

    private void print(NeverCloses never, SurroundSentences sentences) {
        Terminal terminal = root.terminal();
        if (json) {
            List<Possible> possible = never.changes().stream()
                    .map(change -> new Possible(
                            change.ofInner() ? "inner" : "outer",
                            change.section().member(),
                            change.now(),
                            change.then(),
                            change.between()))
                    .toList();
            JsonAnswer.print(new No(false, sentences.of(never), possible), terminal.out());
            return;
        }
        terminal.say(sentences.of(never));
        for (Change change : never.changes()) {
            terminal.say(sentences.of(change));
        }
    }

    private void print(Closes closes, SurroundSentences sentences) {
        Terminal terminal = root.terminal();
        Chart chart = closes.chart();
        SideMultiple base = SideMultiple.of(chart.shape(), 0, Counting.STITCHES);
        if (json) {
            JsonAnswer.print(
                    new Answer(
                            true,
                            chart.rounds().size(),
                            chart.shape().w(),
                            new Base(base.of(), base.plus()),
                            closes.between()),
                    terminal.out());
            return;
        }
        terminal.sayWritten(terminal.says()
                .text(
                        "surround-done",
                        arg("file", ScreenText.name(to)),
                        count("rounds", chart.rounds().size()),
                        count("stitches", chart.shape().w()),
                        count("multiple", base.of()),
                        count("plus", base.plus())));
        sentences.of(closes).stream().map(ScreenText::oneLine).forEach(terminal::say);
    }
}
