package edgewright.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import edgewright.chart.Chart;
import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.check.Checker;
import edgewright.check.Finding;
import edgewright.check.FindingPlace;
import edgewright.check.FindingSentences;
import edgewright.check.Verdict;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** {@code check}: what cannot be worked, and why. */
@Command(name = "check", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    @ParentCommand
    private RootCommand root;

    @Parameters(paramLabel = "CHART", descriptionKey = "CHARTS", arity = "1..*", converter = PathConverter.class)
    private List<Path> charts;

    @Option(names = "--sides", paramLabel = "N,N,N,N", converter = PerSideConverter.class)
    private PerSide<Integer> sides;

    @Option(names = "--json")
    private boolean json;

    /** The JSON document. */
    private record Answer(List<CheckedChart> charts) {}

    /** More is how many findings are not told; 0 is left out. */
    private record CheckedChart(
            String file,
            String title,
            List<FoundHere> findings,
            @JsonInclude(JsonInclude.Include.NON_DEFAULT) int more) {}

    /** Round, section and place are null where the finding is about more than that. */
    private record FoundHere(
            String rule, String severity, Integer round, String section, Integer place, String message) {}

    @Override
    public Integer call() {
        Terminal terminal = root.terminal();
        FindingsText text = FindingsText.onOut(terminal);
        List<CheckedChart> checked = new ArrayList<>();
        int status = ExitStatus.DONE;
        for (Path file : charts) {
            try {
                Verdict verdict = check(ChartInput.read(file, terminal));
                status = Math.max(status, verdict.hasErrors() ? ExitStatus.NO : ExitStatus.DONE);
                if (json) {
                    checked.add(answer(file, verdict, new FindingSentences(terminal.language())));
                } else {
                    text.print(file, verdict);
                }
            } catch (BadInput bad) {
                terminal.complain(bad.getMessage());
                status = ExitStatus.BAD_INPUT;
            }
        }
        if (!checked.isEmpty()) {
            JsonAnswer.print(new Answer(checked), terminal.out());
        }
        return status;
    }

    private Verdict check(Chart chart) {
        return sides == null ? Checker.check(chart) : Checker.check(chart, sides);
    }

    private static CheckedChart answer(Path file, Verdict verdict, FindingSentences sentences) {
        return new CheckedChart(
                file.toString(),
                verdict.chart().title(),
                verdict.findings().stream()
                        .map(finding -> answer(finding, sentences))
                        .toList(),
                verdict.untold());
    }

    private static FoundHere answer(Finding finding, FindingSentences sentences) {
        String message = sentences.of(finding);
        return finding.place().accept(new FindingPlace.Visitor<FoundHere>() {
            @Override
            public FoundHere stitch(Place stitch) {
                return found(stitch.round(), stitch.section().member(), stitch.place(), message);
            }

            @Override
            public FoundHere section(int round, Section section) {
                return found(round, section.member(), null, message);
            }

            @Override
            public FoundHere round(int round) {
                return found(round, null, null, message);
            }

            /** Which side is meant has no member of its own. */
            @Override
            public FoundHere side(Side side) {
                return found(null, null, null, sentences.of(finding.place()) + ": " + message);
            }

            private FoundHere found(Integer round, String section, Integer place, String said) {
                return new FoundHere(
                        finding.rule(),
                        finding.severity().name().toLowerCase(Locale.ROOT),
                        round,
                        section,
                        place,
                        said);
            }
        });
    }
}
