package edgewright.desk.journal;

import static edgewright.texts.Arg.arg;

import edgewright.desk.jobs.FileCommands;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Questions;
import edgewright.desk.work.Workbench;
import edgewright.file.JournalFolder;
import edgewright.file.fault.Problem;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Consumer;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;

/**
 * Keeps the work at a desk: unsaved edits in a journal, lost work offered again, the file of the chart watched for what others do
 * to it, charts opened by dropping them on the window.
 */
public final class DeskJournal {
    private final JFrame desk;
    private final Workbench bench;
    private final FileCommands files;
    private final Jobs jobs;
    private final Questions asking;
    private final Consumer<String> news;
    private final Language language;
    private final Messages says;

    public DeskJournal(
            JFrame desk,
            Workbench bench,
            FileCommands files,
            Jobs jobs,
            Questions asking,
            Consumer<String> news,
            Language language) {
        this.desk = desk;
        this.bench = bench;
        this.files = files;
        this.jobs = jobs;
        this.asking = asking;
        this.news = news;
        this.language = language;
        says = language.messages("desk/journal");
    }

    /**
     * Begins, with the journals of this folder, until the desk is put away.
     *
     * @param then done once all lost work has been offered, unless a chart was laid on the desk by it
     */
    public void begin(JournalFolder folder, Runnable then) {
        ScheduledExecutorService thread = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread files = new Thread(work, "files");
            // A folder on a network may keep it for ever; the program ends all the same.
            files.setDaemon(true);
            return files;
        });
        ChartKeeping keeping =
                new ChartKeeping(bench, files::lastSeen, folder.begin(this::troubled), InstantSource.system());
        ChangedFiles changes = new ChangedFiles(desk, bench, files, jobs, asking, folder, thread, news, language);
        LostWork lost = new LostWork(desk, bench, files, asking, keeping, thread, news, language);
        ChartDrop.on(desk.getRootPane(), this::open);
        desk.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosed(WindowEvent event) {
                keeping.end();
                changes.end();
                thread.shutdown();
            }
        });
        thread.execute(() -> lost.offer(folder.lost(this::troubled), then));
    }

    private void open(Path dropped) {
        files.whenNothingIsLost(() -> files.open(dropped));
    }

    private void troubled(Problem problem) {
        SwingUtilities.invokeLater(() ->
                news.accept(says.text("news-notKept", arg("problem", new ProblemSentences(language).of(problem)))));
    }
}
