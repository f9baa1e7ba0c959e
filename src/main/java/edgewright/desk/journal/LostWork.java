package edgewright.desk.journal;

import static edgewright.texts.Arg.arg;

import edgewright.desk.jobs.DeskState;
import edgewright.desk.jobs.FileCommands;
import edgewright.desk.journal.LostWorkQuestion.Saved;
import edgewright.file.ChartFiles;
import edgewright.file.FileNames;
import edgewright.file.FileProblemException;
import edgewright.file.JournalFolder.Lost;
import edgewright.file.ReadResult;
import edgewright.file.fault.ProblemSentences;
import edgewright.texts.Messages;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/** Offers what earlier processes lost, one after the other, and does what is answered. */
final class LostWork {
    private final DeskState desk;
    private final Supplier<DeskJournal.Kept> sheet;
    private final Executor thread;
    private final Messages says;
    private final ProblemSentences problems;
    private final Deque<Found> left = new ArrayDeque<>();
    private Runnable then = () -> {};

    /** Lost work, and what lies in its file now. */
    private record Found(Lost lost, Optional<Saved> saved) {}

    /**
     * @param sheet gives a document on which nothing would be missed, for a chart to be laid on
     * @param thread on which files are read and written
     */
    LostWork(DeskState desk, Supplier<DeskJournal.Kept> sheet, Executor thread) {
        this.desk = desk;
        this.sheet = sheet;
        this.thread = thread;
        says = desk.language().messages("desk/journal");
        problems = new ProblemSentences(desk.language());
    }

    /**
     * Offers it; then goes on. Not for the event thread, since it reads files.
     */
    void offer(List<Lost> lost, Runnable afterwards) {
        List<Found> found = lost.stream().map(LostWork::found).toList();
        SwingUtilities.invokeLater(() -> {
            then = afterwards;
            left.addAll(found);
            next();
        });
    }

    private static Found found(Lost lost) {
        Optional<Path> file = lost instanceof Lost.Work work ? work.entry().file() : Optional.empty();
        return new Found(lost, file.flatMap(LostWork::saved));
    }

    private static Optional<Saved> saved(Path file) {
        try {
            Instant at = Files.getLastModifiedTime(file).toInstant();
            return ChartFiles.read(file) instanceof ReadResult.Read read
                    ? Optional.of(new Saved(read, at))
                    : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private void next() {
        Found found = left.poll();
        if (found == null) {
            then.run();
        } else if (found.lost() instanceof Lost.Broken broken) {
            desk.questions()
                    .tellSentence(
                            "brokenJournal",
                            says.text(
                                    "lost-broken",
                                    arg("problem", problems.of(broken.problem())),
                                    arg("file", broken.file().toString())));
            next();
        } else {
            Lost.Work work = (Lost.Work) found.lost();
            new LostWorkQuestion(work.entry(), found.saved(), desk.language())
                    .ask(desk.window(), new Answer(work, found.saved()));
        }
    }

    /** Does what is answered about one of them, and goes on to the next. */
    private final class Answer implements LostWorkQuestion.Answers {
        private final Lost.Work work;
        private final Optional<Saved> saved;

        Answer(Lost.Work work, Optional<Saved> saved) {
            this.work = work;
            this.saved = saved;
        }

        @Override
        public void takeUp() {
            DeskJournal.Kept on = sheet.get();
            on.keeping().goOn(work.entry(), work.journal(), () -> lay(on));
            desk.news().accept(says.text("news-takenUp"));
            next();
        }

        /** First what is saved, so that undoing the lost work leads back there. */
        private void lay(DeskJournal.Kept on) {
            if (saved.isPresent()) {
                on.files().lay(work.entry().file().orElseThrow(), saved.get().read());
            } else {
                on.files().begin(on.bench().chart());
            }
            on.bench().edit(says.text("edit-takeUp"), chart -> work.entry().chart());
        }

        @Override
        public void keepBoth() {
            Path file = work.entry().file().orElseThrow();
            Path beside = FileNames.beside(file, says.text("word-lost"));
            thread.execute(() -> {
                try {
                    ChartFiles.write(beside, work.entry().chart());
                    work.journal().clear();
                    work.journal().end();
                    SwingUtilities.invokeLater(() -> kept(file, beside));
                } catch (FileProblemException e) {
                    // The journal has it still.
                    work.journal().end();
                    SwingUtilities.invokeLater(() -> {
                        desk.questions().tellSentence(problems.of(beside, e.problem()));
                        next();
                    });
                }
            });
        }

        private void kept(Path file, Path beside) {
            FileCommands files = sheet.get().files();
            files.lay(file, saved.orElseThrow().read());
            files.remember(beside);
            desk.news()
                    .accept(says.text(
                            "news-lostKept", arg("file", beside.getFileName().toString())));
            next();
        }

        @Override
        public void delete() {
            work.journal().clear();
            work.journal().end();
            desk.news().accept(says.text("news-lostDeleted"));
            next();
        }

        @Override
        public void later() {
            work.journal().end();
            desk.news().accept(says.text("news-lostLater"));
            next();
        }
    }
}
