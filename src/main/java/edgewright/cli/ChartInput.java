package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.file.fault.Problem;
import edgewright.file.fault.ProblemSentences;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Reads the charts that commands are given. */
final class ChartInput {
    private ChartInput() {}

    /**
     * The chart in this file.
     *
     * @throws BadInput if the file is not a chart
     */
    static Chart read(Path file, Terminal terminal) {
        ReadResult result = ChartFiles.read(file);
        if (result instanceof ReadResult.Read read) {
            return read.chart();
        }
        List<Problem> problems = ((ReadResult.Problems) result).problems();
        String line = new ProblemSentences(terminal.language()).of(file, problems.get(0));
        throw new BadInput(
                problems.size() == 1
                        ? line
                        : terminal.says().text("first-of", arg("line", line), count("problems", problems.size())));
    }

    /** Whether this looks like the name of a chart file rather than that of a command. */
    static boolean looksLikeChart(String name) {
        try {
            return name.endsWith(ChartFiles.ENDING) || Files.exists(Path.of(name));
        } catch (InvalidPathException e) {
            return false;
        }
    }
}
