package edgewright.desk.output;

import edgewright.booklet.Booklet;
import edgewright.booklet.PublishOutcome;
import edgewright.booklet.WordsFormat;
import edgewright.booklet.choice.BookletOptions;
import edgewright.chart.Chart;
import edgewright.chart.Terms;
import edgewright.desk.jobs.FileCommands;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Questions;
import edgewright.desk.work.ChartView;
import edgewright.desk.work.DeskTexts;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Workbench;
import edgewright.draw.marks.Drawing;
import edgewright.draw.picture.UnprintedText;
import edgewright.file.FileProblemException;
import edgewright.file.SafeFile;
import edgewright.file.fault.ProblemSentences;
import edgewright.words.write.WordingOptions;
import java.awt.Window;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** Publishes the pattern and writes pictures of the chart, beside the event thread. */
public final class PublishCommands {
    private final Window window;
    private final Workbench bench;
    private final Questions asking;
    private final Jobs jobs;
    private final ChartView view;
    private final Settings settings;

    public PublishCommands(
            Window window, Workbench bench, Questions asking, Jobs jobs, ChartView view, Settings settings) {
        this.window = window;
        this.bench = bench;
        this.asking = asking;
        this.jobs = jobs;
        this.view = view;
        this.settings = settings;
    }

    /** Asks how and where, then publishes the chart as it is now. */
    public void publish() {
        Chart chart = bench.chart();
        int errors = bench.verdict().errors().size();
        PublishDialog dialog = new PublishDialog(window, chart, view, errors, settings);
        if (!dialog.ask()) {
            return;
        }
        dialog.remember();
        BookletOptions options = dialog.options();
        name(Booklet.unprinted(chart, options));
        where("publish.title", "files.patterns", ".pdf").ifPresent(file -> publish(chart, options, file));
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
        where("picture.title", "files.pictures." + kind.name(), kind.ending())
                .ifPresent(file -> jobs.beginStoppable(
                        DeskTexts.of("job.picture", file.getFileName()),
                        worker -> PictureFiles.write(drawing, kind, dotsPerInch, file, worker::cancelled),
                        written -> written
                                ? DeskTexts.of("news.picture", file.getFileName())
                                : DeskTexts.of("job.cancelled"),
                        problem -> failed(file, problem)));
    }

    /** Names what will stand as a number, while there is still time to turn back. */
    private void name(List<UnprintedText> unprinted) {
        if (!unprinted.isEmpty()) {
            asking.tell(
                    "news.unprinted",
                    unprinted.stream()
                            .map(text -> text.sentence(view.language()))
                            .collect(Collectors.joining("; ")));
        }
    }

    /** Asks how and where, then writes the words of the chart as it is now. */
    public void words() {
        Chart chart = bench.chart();
        WordsDialog dialog =
                new WordsDialog(window, chart, view, bench.verdict().errors().size());
        if (!dialog.ask()) {
            return;
        }
        WordsFormat format = dialog.format();
        WordingOptions options = dialog.options();
        List<Terms> terms = dialog.terms();
        where("saveWords.title", "files.words." + format.name(), format.ending())
                .ifPresent(file -> jobs.begin(
                        DeskTexts.of("job.words", file.getFileName()),
                        worker -> {
                            byte[] words = format.write(chart, options, terms, view.language())
                                    .getBytes(StandardCharsets.UTF_8);
                            SafeFile.write(file, out -> out.write(words));
                            return file;
                        },
                        written -> DeskTexts.of("news.words", written.getFileName()),
                        problem -> failed(file, problem)));
    }

    /** Publishes a chart to a file; the job can be stopped. */
    public void publish(Chart chart, BookletOptions options, Path file) {
        jobs.beginStoppable(
                DeskTexts.of("job.publish", file.getFileName()),
                worker -> Booklet.publish(chart, options, file, (done, pages) -> {
                    worker.progress(100 * done / Math.max(1, pages));
                    return !worker.cancelled();
                }),
                outcome -> said(outcome, file),
                problem -> failed(file, problem));
    }

    private String said(PublishOutcome outcome, Path file) {
        if (outcome instanceof PublishOutcome.Published published) {
            return DeskTexts.of(
                    published.draft() ? "news.publishedDraft" : "news.published",
                    file.getFileName(),
                    published.pages());
        }
        if (outcome instanceof PublishOutcome.TooLarge large) {
            asking.tell("news.tooLarge", large.stitches(), Booklet.MOST_STITCHES);
            return DeskTexts.of("news.notWritten", file.getFileName());
        }
        if (outcome instanceof PublishOutcome.NotProved no) {
            asking.tell("news.notProved", no.problems().get(0));
            return DeskTexts.of("news.notWritten", file.getFileName());
        }
        return outcome instanceof PublishOutcome.Cancelled
                ? DeskTexts.of("job.cancelled")
                : DeskTexts.of("news.refused");
    }

    private Optional<Path> where(String title, String kind, String ending) {
        String name = FileCommands.fileName(bench.chart().title()) + ending;
        Path proposal = bench.file().map(file -> file.resolveSibling(name)).orElse(Path.of(name));
        return asking.fileToWrite(DeskTexts.of(title), DeskTexts.of(kind), ending, proposal);
    }

    private String failed(Path file, Throwable problem) {
        if (problem instanceof FileProblemException known) {
            asking.tellSentence(new ProblemSentences(view.language()).of(file, known.problem()));
        } else if (problem instanceof IOException) {
            asking.tell("news.notWritten", file.getFileName());
        } else {
            asking.tell("news.failed", file.getFileName());
        }
        return DeskTexts.of("news.notWritten", file.getFileName());
    }
}
