package edgewright.cli;

import edgewright.chart.Chart;
import edgewright.check.Finding;
import edgewright.check.FindingSentences;
import edgewright.check.Remedy;
import edgewright.check.Severity;
import edgewright.check.Verdict;
import edgewright.texts.Language;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Help.Ansi;

/** Findings as lines for people. */
final class FindingsText {
    /** So many findings of a chart are told; whoever has more begins with these, or asks for JSON. */
    private static final int MOST_FINDINGS = 200;

    /** So many are told where something else was asked for. */
    private static final int MOST_IN_THE_WAY = 10;

    private final PrintStream to;
    private final Ansi ansi;
    private final FindingSentences sentences;

    /** Where they are what was asked for. */
    FindingsText(Terminal terminal) {
        this(terminal.out(), terminal.colours(), terminal.language());
    }

    private FindingsText(PrintStream to, boolean colours, Language language) {
        this.to = to;
        this.ansi = colours ? Ansi.ON : Ansi.OFF;
        this.sentences = new FindingSentences(language);
    }

    /** Where they stand in the way of what was asked for. */
    static FindingsText inTheWay(Terminal terminal) {
        return new FindingsText(terminal.err(), false, terminal.language());
    }

    /** A line for the chart, then each finding with what helps. */
    void print(Path file, Verdict verdict) {
        print(file, verdict, MOST_FINDINGS, "check.more");
    }

    /** The same, but only the first few, for a command that they stand in the way of. */
    void printFirst(Path file, Verdict verdict) {
        print(file, verdict, MOST_IN_THE_WAY, "check.moreByCheck");
    }

    private void print(Path file, Verdict verdict, int most, String more) {
        printSummary(file, verdict);
        List<Finding> findings = verdict.findings();
        findings.stream().limit(most).forEach(this::print);
        if (findings.size() > most) {
            to.println(CommandTexts.of(more, findings.size() - most));
        }
    }

    /** One line: how many findings there are. */
    void printSummary(Path file, Verdict verdict) {
        int errors = verdict.errors().size();
        Chart chart = verdict.chart();
        to.println(CommandTexts.of(
                verdict.judged() ? "check.summary" : "check.notJudged",
                CommandTexts.name(file),
                CommandTexts.oneLine(chart.title()),
                chart.rounds().size(),
                errors,
                verdict.findings().size() - errors,
                verdict.longStitchesJudged()));
    }

    private void print(Finding finding) {
        boolean isError = finding.severity() == Severity.ERROR;
        String severity = CommandTexts.of(isError ? "error" : "warning");
        String coloured = ansi.string((isError ? "@|bold,red " : "@|bold,yellow ") + severity + "|@");
        to.println(CommandTexts.of(
                "check.finding",
                coloured,
                sentences.of(finding.place()),
                CommandTexts.oneLine(sentences.of(finding)),
                finding.rule()));
        String key = "check.remedy";
        for (Remedy remedy : finding.remedies()) {
            to.println(CommandTexts.of(key, CommandTexts.oneLine(sentences.of(remedy))));
            key = "check.otherRemedy";
        }
    }
}
