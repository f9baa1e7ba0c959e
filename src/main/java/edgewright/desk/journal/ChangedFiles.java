package edgewright.desk.journal;

import static edgewright.texts.Arg.arg;

import edgewright.chart.Chart;
import edgewright.desk.jobs.DeskState;
import edgewright.desk.jobs.FileCommands;
import edgewright.desk.jobs.Jobs;
import edgewright.desk.jobs.Lanes;
import edgewright.desk.work.Workbench;
import edgewright.file.ChartFiles;
import edgewright.file.ChartPresence;
import edgewright.file.FileNames;
import edgewright.file.Fingerprint;
import edgewright.file.JournalFolder;
import edgewright.file.ReadResult;
import edgewright.texts.Messages;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.ScheduledExecutorService;
import javax.swing.SwingUtilities;

/** Notices within a second or two that others have changed the file of the chart, and at once that others have it open. */
final class ChangedFiles {
    private final DeskState desk;
    private final Workbench bench;
    private final FileCommands files;
    private final Jobs jobs;
    private final JournalFolder folder;
    private final ScheduledExecutorService thread;
    private final Messages says;
    private final FileWatcher watcher;
    private Optional<Path> file = Optional.empty();
    private Optional<ChangedFileQuestion> question = Optional.empty();
    /** What the file is to hold; another thing is a change. Read by the thread. */
    private volatile Optional<Fingerprint> expected = Optional.empty();
    /** Of the thread. */
    private Optional<ChartPresence> presence = Optional.empty();

    /** @param thread on which files are looked at and read */
    ChangedFiles(
            Workbench bench,
            FileCommands files,
            DeskState desk,
            JournalFolder folder,
            ScheduledExecutorService thread) {
        this.bench = bench;
        this.files = files;
        this.desk = desk;
        jobs = desk.lanes().in(Lanes.Lane.FILE);
        this.folder = folder;
        this.thread = thread;
        says = desk.language().messages("desk/journal");
        watcher = new FileWatcher(thread, look -> {
            if (!look.now().equals(expected)) {
                SwingUtilities.invokeLater(() -> see(look));
            }
        });
        bench.listen(change -> {
            switch (change.kind()) {
                case OPENED, SAVED -> begin();
                case EDITED, DRAWN -> question.ifPresent(ChangedFileQuestion::follow);
                case CURSOR, STITCH -> {}
            }
        });
        begin();
    }

    /** The chart is put away. */
    void end() {
        closeQuestion();
        watcher.watch(Optional.empty());
        thread.execute(() -> presence.ifPresent(ChartPresence::leave));
    }

    private void begin() {
        closeQuestion();
        expected = files.lastSeen();
        if (!bench.file().equals(file)) {
            file = bench.file();
            watcher.watch(file);
            Optional<Path> entered = file;
            thread.execute(() -> enter(entered));
        }
    }

    private void enter(Optional<Path> entered) {
        presence.ifPresent(ChartPresence::leave);
        presence = entered.map(folder::enter);
        if (presence.filter(ChartPresence::isElsewhere).isPresent()) {
            SwingUtilities.invokeLater(() -> desk.questions()
                    .tellSentence(
                            "openElsewhere", says.text("openElsewhere", arg("file", name(entered.orElseThrow())))));
        }
    }

    private void see(FileWatcher.Look look) {
        if (jobs.isBusy() || look.now().equals(expected) || !file.equals(Optional.of(look.file()))) {
            // A save of our own changes the file too; if it was another, the next look sees it still.
            return;
        }
        expected = look.now();
        if (look.now().equals(files.lastSeen())) {
            closeQuestion();
            desk.news().accept(says.text("news-asBefore", arg("file", name(look.file()))));
        } else if (look.now().isEmpty()) {
            desk.news().accept(says.text("news-gone", arg("file", name(look.file()))));
        } else {
            thread.execute(() -> {
                ReadResult now = ChartFiles.read(look.file());
                SwingUtilities.invokeLater(() -> read(look.file(), now));
            });
        }
    }

    private void read(Path from, ReadResult now) {
        if (!file.equals(Optional.of(from))) {
            return;
        }
        if (now instanceof ReadResult.Read theirs) {
            compare(from, theirs);
        } else {
            desk.news().accept(says.text("news-unreadable", arg("file", name(from))));
        }
    }

    private void compare(Path from, ReadResult.Read theirs) {
        Chart mine = bench.chart();
        if (files.lastSeen().equals(Optional.of(theirs.fingerprint()))) {
            closeQuestion();
        } else if (theirs.chart().equals(mine)) {
            files.holds(from, theirs);
            desk.news().accept(says.text("news-sameAgain", arg("file", name(from))));
        } else if (question.isPresent()) {
            question.get().show(theirs);
        } else {
            question = Optional.of(
                    new ChangedFileQuestion(desk.window(), bench, from, theirs, new Answer(from), desk.language()));
        }
    }

    private void closeQuestion() {
        question.ifPresent(ChangedFileQuestion::drop);
        question = Optional.empty();
    }

    private static String name(Path path) {
        return String.valueOf(path.getFileName());
    }

    /** Does what is answered about a file that others have changed. */
    private final class Answer implements ChangedFileQuestion.Answers {
        private final Path changed;

        Answer(Path changed) {
            this.changed = changed;
        }

        @Override
        public void reload(ReadResult.Read theirs) {
            question = Optional.empty();
            bench.edit(says.text("edit-reload"), chart -> theirs.chart());
            files.holds(changed, theirs);
            desk.news().accept(says.text("news-reloaded", arg("file", name(changed))));
        }

        @Override
        public void keepBoth() {
            question = Optional.empty();
            files.saveIn(FileNames.beside(changed, says.text("word-mine")));
        }

        @Override
        public void goOn() {
            question = Optional.empty();
            desk.news().accept(says.text("news-goOn", arg("file", name(changed))));
        }
    }
}
