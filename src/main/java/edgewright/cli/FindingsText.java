package edgewright.cli;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.chart.Chart;
import edgewright.check.Finding;
import edgewright.check.FindingCount;
import edgewright.check.FindingSentences;
import edgewright.check.Remedy;
import edgewright.check.Severity;
import edgewright.check.Verdict;
import edgewright.texts.Messages;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Help.Ansi;

/** Findings as lines for people. */
final class FindingsText {
    /** So many findings are told where something else was asked for. */
    private static final int MOST_IN_THE_WAY = 10;

    /** What helps is tried out, which takes its time in a large chart; so many findings have it beside them. */
    private static final int MOST_HELPED = 100;

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

    /** A line for the chart, then each finding that the verdict tells, with what helps. */
    void print(Path file, Verdict verdict) {
        printSummary(file, verdict);
        List<Finding> findings = verdict.findings();
        for (int i = 0; i < findings.size(); i++) {
            print(findings.get(i));
            if (i < MOST_HELPED) {
                printRemedies(findings.get(i));
            }
        }
        if (findings.size() > MOST_HELPED) {
            to.println(says.text("check-helped", count("most", MOST_HELPED)));
        }
        if (verdict.untold() > 0) {
            to.println(says.text("check-more", count("findings", verdict.untold())));
        }
    }

    /** Whether a chart has no errors, so that something may be made of it; if it has some, the first findings are printed. */
    boolean isSound(Path file, Verdict verdict) {
        if (verdict.hasErrors()) {
            printFirst(file, verdict);
        }
        return !verdict.hasErrors();
    }

    /** The same, but only the first few, for a command that they stand in the way of. */
    void printFirst(Path file, Verdict verdict) {
        printSummary(file, verdict);
        verdict.findings().stream().limit(MOST_IN_THE_WAY).forEach(finding -> {
            print(finding);
            printRemedies(finding);
        });
        int more = verdict.count().all() - MOST_IN_THE_WAY;
        if (more > 0) {
            to.println(says.text(
                    "check-moreByCheck",
                    count("findings", more),
                    count("untold", verdict.untold()),
                    count("most", Verdict.MOST_TOLD)));
        }
    }

    /** One line: how many findings there are. */
    void printSummary(Path file, Verdict verdict) {
        FindingCount found = verdict.count();
        Chart chart = verdict.chart();
        to.println(
                verdict.judged()
                        ? says.text(
                                "check-summary",
                                arg("file", ScreenText.name(file)),
                                arg("title", ScreenText.oneLine(chart.title())),
                                count("rounds", chart.rounds().size()),
                                count("errors", found.errors()),
                                count("warnings", found.warnings()),
                                count("stitches", verdict.longStitchesJudged()))
                        : says.text(
                                "check-notJudged",
                                arg("file", ScreenText.name(file)),
                                arg("title", ScreenText.oneLine(chart.title())),
                                count("rounds", chart.rounds().size()),
                                count("errors", found.errors())));
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
    }

    private void printRemedies(Finding finding) {
        boolean first = true;
        for (Remedy remedy : finding.remedies()) {
            to.println(says.text(
                    first ? "check-remedy" : "check-otherRemedy",
                    arg("remedy", ScreenText.oneLine(sentences.of(remedy)))));
            first = false;
        }
    }
}
