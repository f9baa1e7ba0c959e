package edgewright.desk.output;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.booklet.Booklet;
import edgewright.booklet.Preview;
import edgewright.booklet.PublishOutcome;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Paper;
import edgewright.booklet.choice.Progress;
import edgewright.chart.Chart;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Printers;
import edgewright.desk.jobs.Questions;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Workbench;
import edgewright.texts.Messages;
import java.awt.Window;
import java.awt.print.PrinterException;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Optional;
import javax.print.attribute.standard.MediaSizeName;
import javax.swing.SwingUtilities;

/**
 * Sends the pages of the pattern to a printer: they are shown first, with all that can be chosen for a published pattern, then
 * the dialog of the platform asks for printer, pages and copies.
 */
public final class PrintCommands {
    /** What came of making the pages: how it ended, and the pages where there are any. */
    private record Made(PublishOutcome outcome, Optional<Preview> pages) {}

    private final Workbench bench;
    private final Questions asking;
    private final Jobs jobs;
    private final Printers printers;
    private final PagesQuestion question;
    private final Messages says;

    public PrintCommands(
            Window window,
            Workbench bench,
            Questions asking,
            Jobs jobs,
            ChartView view,
            Settings settings,
            Printers printers) {
        this.bench = bench;
        this.asking = asking;
        this.jobs = jobs;
        this.printers = printers;
        question = new PagesQuestion(
                window, asking, view, settings, new OwnFilesJob(bench, asking, jobs, view.language()));
        says = view.language().messages("desk/output");
    }

    /** Looks for a printer, shows the pages of the chart as it is now, asks how to print them, and does. */
    public void print() {
        Chart chart = bench.chart();
        int errors = bench.verdict().count().errors();
        jobs.begin(
                says.text("job-printers"),
                worker -> printers.isAnyThere(),
                isAnyThere -> {
                    if (!isAnyThere) {
                        asking.tellSentence("news.noPrinter", says.text("news-noPrinter"));
                        return says.text("news-noPrinter");
                    }
                    SwingUtilities.invokeLater(() -> question.ask(
                            chart,
                            errors,
                            PublishDialog.Use.PRINT,
                            Optional.empty(),
                            dialog -> makePages(chart, dialog.options())));
                    return " ";
                },
                problem -> says.text("news-notPrinted"));
    }

    private void makePages(Chart chart, BookletOptions options) {
        jobs.beginStoppable(
                says.text("job-pages"),
                worker -> make(chart, options, worker::goesOn),
                made -> {
                    if (made.pages().isEmpty()) {
                        return whyNot(made.outcome());
                    }
                    Preview pages = made.pages().get();
                    SwingUtilities.invokeLater(() -> ask(chart.title(), pages, options.paper()));
                    return says.text("news-pages", count("pages", pages.pages()));
                },
                problem -> says.text("news-pagesBroken"));
    }

    private static Made make(Chart chart, BookletOptions options, Progress progress) throws IOException {
        ByteArrayOutputStream pattern = new ByteArrayOutputStream();
        PublishOutcome outcome = Booklet.publish(chart, options, pattern, progress);
        return new Made(
                outcome,
                outcome instanceof PublishOutcome.Published
                        ? Optional.of(Preview.ofPublished(pattern.toByteArray()))
                        : Optional.empty());
    }

    private String whyNot(PublishOutcome outcome) {
        if (outcome instanceof PublishOutcome.Cancelled) {
            return says.text("news-printCancelled");
        }
        String why = says.text("news-printRefused");
        if (outcome instanceof PublishOutcome.TooLarge large) {
            why = says.text("news-tooLarge", count("stitches", large.stitches()), count("most", Booklet.MOST_STITCHES));
        } else if (outcome instanceof PublishOutcome.NotProved no) {
            why = says.text("news-printNotProved", arg("problem", no.problems().get(0)));
        }
        asking.tellSentence("news.notPrinted", why);
        return why;
    }

    /** Asks by the dialog of the platform, then prints; the pages are put away in every case. */
    private void ask(String title, Preview pages, Paper paper) {
        Optional<Printers.Request> request = Optional.empty();
        try {
            request = printers.ask(title, pages.forPrinter(), media(paper));
        } catch (PrinterException e) {
            asking.tellSentence("news.notPrinted", says.text("news-notPrinted"));
        }
        if (request.isEmpty()) {
            pages.close();
            return;
        }
        Printers.Request asked = request.get();
        jobs.beginStoppable(
                says.text("job-print", arg("title", title)),
                worker -> {
                    try (pages) {
                        return asked.print(worker);
                    }
                },
                printed -> printed ? says.text("news-printed", arg("title", title)) : says.text("news-printStopped"),
                problem -> {
                    asking.tellSentence("news.notPrinted", says.text("news-notPrinted"));
                    return says.text("news-notPrinted");
                });
    }

    private static MediaSizeName media(Paper paper) {
        return switch (paper) {
            case A4 -> MediaSizeName.ISO_A4;
            case LETTER -> MediaSizeName.NA_LETTER;
        };
    }
}
