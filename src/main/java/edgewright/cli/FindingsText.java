package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.check.Finding;
import edgewright.check.FindingSentences;
import edgewright.check.Remedy;
import edgewright.check.Severity;
import edgewright.check.Verdict;
import edgewright.texts.Messages;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.function.IntFunction;
import picocli.CommandLine.Help.Ansi;

/** Findings as lines for people. */
final class FindingsText {
    /** So many findings of a chart are told; whoever has more begins with these, or asks for JSON. */
    private static final int MOST_FINDINGS = 200;

    /** So many are told where something else was asked for. */
    private static final int MOST_IN_THE_WAY = 10;

    private final PrintStream to;
    private final Ansi ansi;
    private final Messages says;
    private final FindingSentences sentences;

    private FindingsText(PrintStream to, boolean colours, Terminal terminal) {
        this.to = to;
        this.ansi = colours ? Ansi.ON : Ansi.OFF;
        this.says = terminal.says();
        this.sentences = new FindingSentences(terminal.language());
    }

    /** As an answer: the words for severities in colours, if the terminal has them. */
    static FindingsText onOut(Terminal terminal) {
        return new FindingsText(terminal.out(), terminal.colours(), terminal);
    }

    /** As what went wrong. */
    static FindingsText onErr(Terminal terminal) {
        return new FindingsText(terminal.err(), false, terminal);
    }

    /** A line for the chart, then each finding with what helps. */
    void print(Path file, Verdict verdict) {
        print(file, verdict, MOST_FINDINGS, more -> says.text("check-more", count("findings", more)));
    }

    /** The same, but only the first few, for a command that they stand in the way of. */
    void printFirst(Path file, Verdict verdict) {
        print(file, verdict, MOST_IN_THE_WAY, more -> says.text("check-moreByCheck", count("findings", more)));
    }

    private void print(Path file, Verdict verdict, int most, IntFunction<String> more) {
        printSummary(file, verdict);
        List<Finding> findings = verdict.findings();
        findings.stream().limit(most).forEach(this::print);
        if (findings.size() > most) {
            to.println(more.apply(findings.size() - most));
        }
    }

    /** One line: how many findings there are. */
    void printSummary(Path file, Verdict verdict) {
        int errors = verdict.errors().size();
        Chart chart = verdict.chart();
        to.println(
                verdict.judged()
                        ? says.text(
                                "check-summary",
                                arg("file", ScreenText.name(file)),
                                arg("title", ScreenText.oneLine(chart.title())),
                                count("rounds", chart.rounds().size()),
                                count("errors", errors),
                                count("warnings", verdict.findings().size() - errors),
                                count("stitches", verdict.longStitchesJudged()))
                        : says.text(
                                "check-notJudged",
                                arg("file", ScreenText.name(file)),
                                arg("title", ScreenText.oneLine(chart.title())),
                                count("rounds", chart.rounds().size()),
                                count("errors", errors)));
    }

    private void print(Finding finding) {
        boolean isError = finding.severity() == Severity.ERROR;
        String severity = says.text(isError ? "error" : "warning");
        String coloured = ansi.string((isError ? "@|bold,red " : "@|bold,yellow ") + severity + "|@");
        to.println(says.text(
                "check-finding",
                arg("severity", coloured),
                arg("place", sentences.of(finding.place())),
                arg("finding", ScreenText.oneLine(sentences.of(finding))),
                arg("rule", finding.rule())));
        boolean first = true;
        for (Remedy remedy : finding.remedies()) {
            to.println(says.text(
                    first ? "check-remedy" : "check-otherRemedy",
                    arg("remedy", ScreenText.oneLine(sentences.of(remedy)))));
            first = false;
        }
    }
}
