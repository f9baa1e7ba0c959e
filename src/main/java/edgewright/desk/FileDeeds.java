package edgewright.desk;

import edgewright.chart.Chart;
import edgewright.file.ChartFiles;
import edgewright.file.FileProblemException;
import edgewright.file.Fingerprint;
import edgewright.file.ProblemSentences;
import edgewright.file.ReadResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * New, open, save. Files are read and written beside the event thread; unsaved work is asked about before it would be lost, and
 * so is a file that somebody else has changed.
 */
final class FileDeeds {
    private final Workbench bench;
    private final Settings settings;
    private final Asking asking;
    private final Jobs jobs;
    private final Consumer<String> news;
    /** What the file of the chart held when it was read or written last. */
    private Optional<Fingerprint> lastSeen = Optional.empty();

    FileDeeds(Workbench bench, Settings settings, Asking asking, Jobs jobs, Consumer<String> news) {
        this.bench = bench;
        this.settings = settings;
        this.asking = asking;
        this.jobs = jobs;
        this.news = news;
    }

    /** Lays a new chart on the bench, which has no file yet; unsaved work was asked about. */
    void begin(Chart chart) {
        lastSeen = Optional.empty();
        bench.open(chart, Optional.empty());
        news.accept(Texts.of("news.begun", chart.title()));
    }

    /** Opens this file, if it is a chart; else says what is wrong with it. Unsaved work was asked about. */
    void open(Path file) {
        jobs.begin(
                Texts.of("job.open", file.getFileName()),
                worker -> ChartFiles.read(file),
                result -> {
                    if (result instanceof ReadResult.Read read) {
                        lastSeen = Optional.of(read.fingerprint());
                        settings.addRecent(file);
                        bench.open(read.chart(), Optional.of(file));
                        return Texts.of("news.opened", file.getFileName());
                    }
                    ReadResult.Problems problems = (ReadResult.Problems) result;
                    if (Files.notExists(file)) {
                        settings.removeRecent(file);
                    }
                    asking.tellSentence(sentences(file, problems));
                    return Texts.of("news.notOpened", file.getFileName());
                },
                problem -> Texts.of("news.notOpened", file.getFileName()));
    }

    /** Saves the chart in its file, or asks for one; then goes on, unless it was not saved. */
    void save(Runnable then) {
        Optional<Path> file = bench.file();
        if (file.isEmpty()) {
            saveAs(then);
            return;
        }
        if (!hasChanged(file.get()) || asking.mayReplaceChanged(file.get())) {
            write(file.get(), then);
        }
    }

    /** Asks for a file and saves the chart there; then goes on, unless it was not saved. */
    void saveAs(Runnable then) {
        Path proposal =
                bench.file().orElseGet(() -> Path.of(fileName(bench.chart().title()) + ChartFiles.ENDING));
        asking.fileToWrite(Texts.of("files.saveTitle"), Texts.of("files.charts"), ChartFiles.ENDING, proposal)
                .ifPresent(file -> write(file, then));
    }

    /** Goes on when nothing would be lost: at once, or when the unsaved work has been saved or thrown away. */
    void whenNothingIsLost(Runnable then) {
        if (!bench.hasUnsavedWork()) {
            then.run();
            return;
        }
        switch (asking.aboutUnsaved(bench.chart().title())) {
            case SAVE -> save(then);
            case DISCARD -> then.run();
            case CANCEL -> news.accept(Texts.of("news.goOn"));
        }
    }

    /** A title as the name of a file: its letters and digits in small, with hyphens between the words. */
    static String fileName(String title) {
        String name = title.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{Nd}]+", "-")
                .replaceAll("^-|-$", "");
        return name.isEmpty() ? Texts.of("files.nameless") : name;
    }

    /** A file that has gone may be written again without a question. */
    private boolean hasChanged(Path file) {
        Optional<Fingerprint> now = ChartFiles.fingerprint(file);
        return now.isPresent() && !now.equals(lastSeen);
    }

    private void write(Path file, Runnable then) {
        Chart chart = bench.chart();
        jobs.begin(
                Texts.of("job.save", file.getFileName()),
                worker -> ChartFiles.write(file, chart),
                fingerprint -> {
                    lastSeen = Optional.of(fingerprint);
                    settings.addRecent(file);
                    bench.saved(chart, file);
                    javax.swing.SwingUtilities.invokeLater(then);
                    return Texts.of("news.saved", file.getFileName());
                },
                problem -> {
                    asking.tellSentence(
                            problem instanceof FileProblemException known
                                    ? ProblemSentences.of(file, known.problem())
                                    : Texts.of("news.notSaved", file.getFileName()));
                    return Texts.of("news.notSaved", file.getFileName());
                });
    }

    /** The first few problems; a person mends one at a time. */
    private static String sentences(Path file, ReadResult.Problems problems) {
        StringBuilder text = new StringBuilder();
        problems.problems().stream()
                .limit(3)
                .forEach(problem -> text.append(ProblemSentences.of(file.getFileName(), problem))
                        .append('\n'));
        int more = problems.problems().size() - 3;
        return more > 0 ? text + Texts.of("files.more", more) : text.toString().strip();
    }
}
