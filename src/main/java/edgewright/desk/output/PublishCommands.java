package edgewright.desk.output;

import static edgewright.texts.Arg.arg;
import static edgewright.texts.Arg.count;

import edgewright.booklet.Booklet;
import edgewright.booklet.PublishOutcome;
import edgewright.booklet.WordsFormat;
import edgewright.booklet.choice.BookletOptions;
import edgewright.booklet.choice.Progress;
import edgewright.booklet.own.PrintedMatter;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.desk.jobs.FileCommands;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Questions;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Workbench;
import edgewright.draw.marks.Drawing;
import edgewright.draw.picture.UnprintedText;
import edgewright.file.FileProblemException;
import edgewright.file.SafeFile;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.Messages;
import edgewright.words.write.WordingOptions;
import java.awt.Window;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Publishes the pattern and writes pictures of the chart, beside the event thread. */
public final class PublishCommands {
    private final Messages says;
    private final Window window;
    private final Workbench bench;
    private final Questions asking;
    private final Jobs jobs;
    private final ChartView view;
    private final Consumer<Path> made;
    private final OwnFilesJob ownFiles;
    private final PagesQuestion question;

    /** @param made is given each file when it is written */
    public PublishCommands(
            Window window,
            Workbench bench,
            Questions asking,
            Jobs jobs,
            ChartView view,
            Settings settings,
            Consumer<Path> made) {
        this.window = window;
        this.bench = bench;
        this.asking = asking;
        this.jobs = jobs;
        this.view = view;
        this.made = made;
        says = view.language().messages("desk/output");
        ownFiles = new OwnFilesJob(bench, asking, jobs, view.language());
        question = new PagesQuestion(window, asking, view, settings, ownFiles);
    }

    /** Asks how and where, then publishes the chart as it is now. */
    public void publish() {
        publish(Optional.empty());
    }

    /** The same, for one piece unless another is chosen in the asking. */
    public void publish(PieceOrder order) {
        publish(Optional.of(order));
    }

    private void publish(Optional<PieceOrder> order) {
        Chart chart = bench.chart();
        int errors = bench.verdict().count().errors();
        question.ask(chart, errors, PublishDialog.Use.PUBLISH, order, dialog -> publish(chart, dialog));
    }

    private void publish(Chart chart, PublishDialog dialog) {
        BookletOptions options = dialog.options();
        name(Booklet.unprinted(chart, options));
        Optional<Path> file = where(says.text("publish-title"), says.text("files-patterns"), ".pdf", "");
        if (file.isEmpty()) {
            return;
        }
        Optional<BookletOptions> workbook = dialog.workbook();
        Optional<Path> second = workbook.isEmpty()
                ? Optional.empty()
                : where(says.text("publish-workbook-title"), says.text("files-patterns"), ".pdf", "-workbook");
        if (second.isPresent() && second.get().equals(file.get())) {
            asking.tellSentence("news.sameFile", says.text("news-sameFile", arg("file", nameOf(file.get()))));
            return;
        }
        if (workbook.isEmpty() || second.isPresent()) {
            publish(chart, options, file.get(), second.map(to -> new Second(workbook.get(), to)));
        }
    }

    /** Asks how and where, then writes the chart as it is now as a picture. */
    public void picture() {
        Chart chart = bench.chart();
        PictureDialog dialog = new PictureDialog(window, chart, view);
        if (!dialog.ask()) {
            return;
        }
        Supplier<Drawing> drawing = dialog.drawing();
        double dotsPerInch = dialog.dotsPerInch();
        PictureDialog.Kind kind = dialog.kind();
        name(dialog.unprinted());
        where(says.text("picture-title"), says.text("files-pictures-" + kind.name()), kind.ending())
                .ifPresent(file -> jobs.beginStoppable(
                        says.text("job-picture", arg("file", nameOf(file))),
                        worker -> PictureFiles.write(drawing, kind, dotsPerInch, file, worker::cancelled),
                        written -> {
                            if (!written) {
                                return says.text("job-cancelled");
                            }
                            made.accept(file);
                            return says.text("news-picture", arg("file", nameOf(file)));
                        },
                        problem -> failed(file, problem)));
    }

    /** Names what will stand as a number, while there is still time to turn back. */
    private void name(List<UnprintedText> unprinted) {
        if (!unprinted.isEmpty()) {
            String texts = unprinted.stream()
                    .map(text -> text.sentence(view.language()))
                    .collect(Collectors.joining("; "));
            asking.tellSentence("news.unprinted", says.text("news-unprinted", arg("texts", texts)));
        }
    }

    /** Asks how and where, then writes the words of the chart as it is now. */
    public void words() {
        words(Optional.empty());
    }

    /** The same, for one piece unless another is chosen in the asking. */
    public void words(PieceOrder order) {
        words(Optional.of(order));
    }

    private void words(Optional<PieceOrder> order) {
        Chart chart = bench.chart();
        int errors = bench.verdict().count().errors();
        ownFiles.with(chart, matter -> words(chart, errors, matter, order));
    }

    private void words(Chart chart, int errors, PrintedMatter matter, Optional<PieceOrder> order) {
        WordsDialog dialog = new WordsDialog(window, chart, view, errors);
        order.ifPresent(dialog::forPiece);
        if (!dialog.ask()) {
            return;
        }
        WordsFormat format = dialog.format();
        WordingOptions options = dialog.options();
        List<Terms> terms = dialog.terms();
        where(says.text("saveWords-title"), says.text("files-words-" + format.name()), format.ending())
                .ifPresent(file -> jobs.begin(
                        says.text("job-words", arg("file", nameOf(file))),
                        worker -> {
                            byte[] words = format.write(chart, options, terms, matter, view.language())
                                    .getBytes(StandardCharsets.UTF_8);
                            SafeFile.write(file, out -> out.write(words));
                            return file;
                        },
                        written -> {
                            made.accept(written);
                            return says.text("news-words", arg("file", nameOf(written)));
                        },
                        problem -> failed(file, problem)));
    }

    /** A second file, and how it is to be. */
    record Second(BookletOptions options, Path file) {}

    /** Publishes a chart to a file, and its workbook to another if it has one; the job can be stopped. */
    void publish(Chart chart, BookletOptions options, Path file, Optional<Second> workbook) {
        jobs.beginStoppable(
                says.text("job-publish", arg("file", nameOf(file))),
                worker -> {
                    Progress progress = worker::goesOn;
                    PublishOutcome outcome = Booklet.publish(chart, options, file, progress);
                    if (outcome instanceof PublishOutcome.Published && workbook.isPresent()) {
                        Second second = workbook.get();
                        PublishOutcome other = Booklet.publish(chart, second.options(), second.file(), progress);
                        return other instanceof PublishOutcome.Published ? outcome : other;
                    }
                    return outcome;
                },
                outcome -> said(outcome, file),
                problem -> failed(file, problem));
    }

    private String said(PublishOutcome outcome, Path file) {
        if (outcome instanceof PublishOutcome.Published published) {
            made.accept(file);
            return says.text(
                    published.draft() ? "news-publishedDraft" : "news-published",
                    arg("file", nameOf(file)),
                    count("pages", published.pages()));
        }
        if (outcome instanceof PublishOutcome.TooLarge large) {
            asking.tellSentence(
                    "news.tooLarge",
                    says.text(
                            "news-tooLarge",
                            count("stitches", large.stitches()),
                            count("most", Booklet.MOST_STITCHES)));
            return says.text("news-notWritten", arg("file", nameOf(file)));
        }
        if (outcome instanceof PublishOutcome.NotProved no) {
            asking.tellSentence(
                    "news.notProved",
                    says.text("news-notProved", arg("problem", no.problems().get(0))));
            return says.text("news-notWritten", arg("file", nameOf(file)));
        }
        return outcome instanceof PublishOutcome.Cancelled ? says.text("job-cancelled") : says.text("news-refused");
    }

    private Optional<Path> where(String title, String kind, String ending) {
        return where(title, kind, ending, "");
    }

    /** @param more what the proposed name has after that of the chart */
    private Optional<Path> where(String title, String kind, String ending, String more) {
        String name = FileCommands.fileName(bench.chart().title(), view.language()) + more + ending;
        Path proposal = bench.file().map(file -> file.resolveSibling(name)).orElse(Path.of(name));
        return asking.fileToWrite(title, kind, ending, proposal);
    }

    /** The file without its folder. */
    private static String nameOf(Path file) {
        return file.getFileName().toString();
    }

    private String failed(Path file, Throwable problem) {
        if (problem instanceof FileProblemException known) {
            asking.tellSentence(new ProblemSentences(view.language()).of(file, known.problem()));
        } else if (problem instanceof IOException) {
            asking.tellSentence("news.notWritten", says.text("news-notWritten", arg("file", nameOf(file))));
        }
        // A mistake in the program is told of by the window, with its cause.
        return says.text("news-notWritten", arg("file", nameOf(file)));
    }
}
