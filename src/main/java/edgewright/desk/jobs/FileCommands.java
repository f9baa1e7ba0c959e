package edgewright.desk.jobs;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Chart;
import edgewright.desk.work.Settings;
import edgewright.desk.work.Workbench;
import edgewright.file.ChartFiles;
import edgewright.file.FileNames;
import edgewright.file.FileProblemException;
import edgewright.file.Fingerprint;
import edgewright.file.ReadResult;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * The file of one document. It is written beside the event thread; unsaved work is asked about before it would be lost, and so
 * is a file that somebody else has changed.
 */
public final class FileCommands {
    private final Workbench bench;
    private final Settings settings;
    private final Questions asking;
    private final Jobs jobs;
    private final Consumer<String> news;
    private final ProblemSentences problemSentences;
    private final Language language;
    private final Messages says;
    /** What the file of the chart held when it was read or written last. */
    private Optional<Fingerprint> lastSeen = Optional.empty();

    /** The commands for the file of this bench. */
    public FileCommands(Workbench bench, DeskState desk) {
        this.bench = bench;
        settings = desk.settings();
        asking = desk.questions();
        jobs = desk.lanes().in(Lanes.Lane.FILE);
        news = desk.news();
        language = desk.language();
        problemSentences = new ProblemSentences(language);
        says = language.messages("desk/jobs");
    }

    /** Lays a new chart on the bench, which has no file yet. */
    public void begin(Chart chart) {
        lastSeen = Optional.empty();
        bench.open(chart, Optional.empty());
        news.accept(says.text("news-begun", arg("title", chart.title())));
    }

    /** Lays a chart that was read from a file on the bench, and says so; unsaved work was asked about. */
    public String lay(Path file, ReadResult.Read read) {
        lastSeen = Optional.of(read.fingerprint());
        settings.addRecent(file);
        asking.lookBeside(file);
        bench.open(read.chart(), Optional.of(file));
        return says.text("news-opened", arg("file", String.valueOf(file.getFileName())));
    }

    /** What the file of the chart held when it was read or written last; empty for a chart without a file. */
    public Optional<Fingerprint> lastSeen() {
        return lastSeen;
    }

    /** Notes that the file of the chart holds this, whoever wrote it. */
    public void holds(Path file, ReadResult.Read read) {
        lastSeen = Optional.of(read.fingerprint());
        bench.saved(read.chart(), file);
    }

    /** Saves the chart in this file, which is not there yet, and goes on with it there. */
    public void saveIn(Path file) {
        write(file, Optional.empty(), () -> {});
    }

    /** Puts a file among the recent charts. */
    public void remember(Path file) {
        settings.addRecent(file);
    }

    /** Saves the chart in its file, or asks for one; then goes on, unless it was not saved. */
    public void save(Runnable then) {
        bench.file().ifPresentOrElse(file -> write(file, lastSeen, then), () -> saveAs(then));
    }

    /** Asks for a file and saves the chart there; then goes on, unless it was not saved. */
    public void saveAs(Runnable then) {
        Path proposal =
                bench.file().orElseGet(() -> Path.of(fileName(bench.chart().title(), language) + ChartFiles.ENDING));
        asking.fileToWrite(says.text("files-saveTitle"), says.text("files-charts"), ChartFiles.ENDING, proposal)
                .ifPresent(file -> write(file, Optional.empty(), then));
    }

    /** Goes on when nothing would be lost: at once, or when the unsaved work has been saved or thrown away. */
    public void whenNothingIsLost(Runnable then) {
        if (!bench.hasUnsavedWork()) {
            then.run();
            return;
        }
        switch (asking.aboutUnsaved(bench.chart().title())) {
            // What is edited during the save is asked about as well.
            case SAVE -> save(() -> whenNothingIsLost(then));
            case DISCARD -> then.run();
            case CANCEL -> news.accept(says.text("news-goOn"));
        }
    }

    /** A title as the name of a file: its letters and digits in small, with hyphens between the words. */
    public static String fileName(String title, Language language) {
        Messages says = language.messages("desk/jobs");
        return FileNames.of(title).orElseGet(() -> says.text("files-nameless"));
    }

    /**
     * Writes the chart as it is now.
     *
     * @param expected what the file should hold still; if it does not, somebody else has changed it and is asked about. Empty
     *     if it may be replaced whatever it holds
     */
    private void write(Path file, Optional<Fingerprint> expected, Runnable then) {
        if (isBusy()) {
            return;
        }
        Chart chart = bench.worked();
        jobs.begin(
                says.text("job-save", arg("file", String.valueOf(file.getFileName()))),
                worker -> writeUnlessChanged(file, expected, chart),
                written -> {
                    if (written.isEmpty()) {
                        SwingUtilities.invokeLater(() -> replaceChanged(file, then));
                        return says.text("news-notSaved", arg("file", String.valueOf(file.getFileName())));
                    }
                    lastSeen = written;
                    settings.addRecent(file);
                    bench.saved(chart, file);
                    SwingUtilities.invokeLater(then);
                    return says.text("news-saved", arg("file", String.valueOf(file.getFileName())));
                },
                problem -> {
                    asking.tellSentence(
                            problem instanceof FileProblemException known
                                    ? problemSentences.of(file, known.problem())
                                    : says.text("news-notSaved", arg("file", String.valueOf(file.getFileName()))));
                    return says.text("news-notSaved", arg("file", String.valueOf(file.getFileName())));
                });
    }

    /** What the file holds now; empty if it was left alone since it held something unexpected. One that has gone may be written. */
    private static Optional<Fingerprint> writeUnlessChanged(Path file, Optional<Fingerprint> expected, Chart chart)
            throws FileProblemException {
        if (expected.isPresent()) {
            Optional<Fingerprint> now = ChartFiles.fingerprint(file);
            if (now.isPresent() && !now.equals(expected)) {
                return Optional.empty();
            }
        }
        return Optional.of(ChartFiles.write(file, chart));
    }

    private void replaceChanged(Path file, Runnable then) {
        if (asking.mayReplaceChanged(file)) {
            write(file, Optional.empty(), then);
        }
    }

    /** Whether a job is running; if one is, says that it has to be waited for. */
    private boolean isBusy() {
        if (jobs.isBusy()) {
            news.accept(says.text("news-busy"));
        }
        return jobs.isBusy();
    }
}
