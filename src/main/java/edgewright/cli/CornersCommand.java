package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;
import static edgewright.texts.Arg.decimal;

import edgewright.assist.corner.CornerProposal;
import edgewright.assist.corner.CornerProposals;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.check.Checker;
import edgewright.fit.SideMultiple;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import picocli.CommandLine.Spec;

/** {@code corners}: charts with the same repeat and other corners, the best that there are. */
@Command(name = "corners", mixinStandardHelpOptions = true)
final class CornersCommand implements Callable<Integer> {
    private static final int MOST = 100;

    @ParentCommand
    private RootCommand root;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CHART", descriptionKey = "CHART", converter = PathConverter.class)
    private Path file;

    @Option(names = "--to", required = true, paramLabel = "FOLDER", converter = PathConverter.class)
    private Path to;

    @Option(names = "--count", paramLabel = "N", defaultValue = "6")
    private int wanted;

    @Option(names = "--json")
    private boolean json;

    /** The JSON document. */
    private record Answer(List<Proposal> proposals) {}

    private record Proposal(String file, int fromCorner, int toCorner, int shift, double score) {}

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        WholeNumberConverter.requireBetween(wanted, "--count", 1, MOST, spec, terminal.says());
        OutputFolder folder = new OutputFolder(to, file, terminal);
        Chart chart = ChartInput.read(file, terminal);
        if (!FindingsText.onErr(terminal).isSound(file, Checker.check(chart))) {
            return ExitStatus.NO;
        }
        List<CornerProposal> proposals = CornerProposals.of(chart, wanted, () -> false);
        List<Path> files =
                folder.write(proposals.stream().map(CornerProposal::chart).toList(), "corner");
        print(proposals, files);
        return ExitStatus.DONE;
    }

    private void print(List<CornerProposal> proposals, List<Path> files) {
        Terminal terminal = root.terminal();
        List<Proposal> answer = new ArrayList<>();
        for (int i = 0; i < proposals.size(); i++) {
            CornerProposal proposal = proposals.get(i);
            Chart chart = proposal.chart();
            answer.add(new Proposal(
                    files.get(i).toString(), chart.shape().a(), chart.shape().b(), proposal.shift(), proposal.score()));
            if (!json) {
                SideMultiple base = SideMultiple.of(chart.shape(), 0, Counting.STITCHES);
                terminal.sayWritten(terminal.says()
                        .text(
                                "corners-done",
                                arg("file", ScreenText.name(files.get(i))),
                                decimal("score", proposal.score(), 1),
                                count("multiple", base.of()),
                                count("plus", base.plus())));
            }
        }
        if (json) {
            JsonAnswer.print(new Answer(answer), terminal.out());
        } else if (proposals.size() < wanted) {
            terminal.say(terminal.says().text("corners-fewer", count("found", proposals.size())));
        }
    }
}
