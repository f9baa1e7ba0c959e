package edgewright.desk.journal;

import static edgewright.texts.Arg.arg;

import edgewright.desk.jobs.DeskState;
import edgewright.desk.jobs.FileCommands;
import edgewright.desk.work.Workbench;
import edgewright.file.JournalFolder;
import edgewright.file.fault.Problem;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;

/**
 * Keeps the work at a desk: unsaved edits of every document in a journal of its own, lost work offered again, the files of the
 * charts watched for what others do to them, charts opened by dropping them on the window.
 */
public final class DeskJournal {
    private final DeskState desk;
    private final JournalFolder folder;
    private final ScheduledExecutorService thread;
    private final Messages says;

    /** A journal with nothing kept in it yet, until {@link #end}. */
    public DeskJournal(DeskState desk, JournalFolder folder) {
        this.desk = desk;
        this.folder = folder;
        says = desk.language().messages("desk/journal");
        thread = Executors.newSingleThreadScheduledExecutor(work -> {
            Thread files = new Thread(work, "files");
            // A folder on a network may keep it for ever; the program ends all the same.
            files.setDaemon(true);
            return files;
        });
    }

    /** A document whose work is kept. */
    public static final class Kept {
        private final Workbench bench;
        private final FileCommands files;
        private final ChartKeeping keeping;
        private final ChangedFiles changes;

        private Kept(Workbench bench, FileCommands files, ChartKeeping keeping, ChangedFiles changes) {
            this.bench = bench;
            this.files = files;
            this.keeping = keeping;
            this.changes = changes;
        }

        Workbench bench() {
            return bench;
        }

        FileCommands files() {
            return files;
        }

        ChartKeeping keeping() {
            return keeping;
        }

        /** The document is put away; whether its unsaved work was to be thrown away has been asked. */
        public void end() {
            keeping.end();
            changes.end();
        }
    }

    /** Keeps the work of a document, and watches its file, until the end of what it gives back. */
    public Kept keep(Workbench bench, FileCommands files) {
        return new Kept(
                bench,
                files,
                new ChartKeeping(bench, files::lastSeen, folder.begin(this::troubled), InstantSource.system()),
                new ChangedFiles(bench, files, desk, folder, thread));
    }

    /** Has this done with every file that is dropped on this part of the window. */
    public void openWhatIsDropped(JRootPane part, Consumer<Path> open) {
        ChartDrop.on(part, open);
    }

    /**
     * Offers what earlier processes lost.
     *
     * @param sheet gives a document on which nothing would be missed, for a chart to be laid on
     * @param then done once all of it has been offered
     */
    public void offerLost(Supplier<Kept> sheet, Runnable then) {
        LostWork lost = new LostWork(desk, sheet, thread);
        thread.execute(() -> lost.offer(folder.lost(this::troubled), then));
    }

    /** The desk is put away, and all its documents have been. */
    public void end() {
        thread.shutdown();
    }

    private void troubled(Problem problem) {
        SwingUtilities.invokeLater(() -> desk.news()
                .accept(says.text("news-notKept", arg("problem", new ProblemSentences(desk.language()).of(problem)))));
    }
}
