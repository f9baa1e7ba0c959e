package edgewright.desk.jobs;

import edgewright.texts.Language;
import edgewright.texts.Messages;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.SwingWorker;

/**
 * Work that takes a while, done beside the event thread: one job at a time, with its progress and a way to stop it. A mistake
 * in the program is not only said: it goes on as it was thrown, with its cause, to whoever tells of such.
 */
public final class Jobs {
    /** Where the progress of a job is shown. Called on the event thread only. */
    public interface Board {
        /** A job has begun; {@code stop}, if it can be stopped, asks it to give up. */
        void begin(String job, Optional<Runnable> stop);

        /** How far it is, of a hundred. */
        void progress(int percent);

        /** It is over. */
        void end(String outcome);
    }

    /** What a job can say while it works. Any thread. */
    public interface Worker {
        /** How far it is: 0 to 100. */
        void progress(int percent);

        /** Whether somebody has asked it to give up. */
        boolean cancelled();

        /** Says that so many of so many steps are done, and asks whether to go on. */
        default boolean goesOn(int done, int all) {
            progress(100 * done / Math.max(1, all));
            return !cancelled();
        }
    }

    /** The work itself; off the event thread. */
    public interface Work<T> {
        T run(Worker worker) throws Exception;
    }

    private final Board board;
    private final Messages says;
    private Runnable listener = () -> {};
    private Optional<SwingWorker<?, ?>> running = Optional.empty();

    public Jobs(Board board, Language language) {
        says = language.messages("desk/jobs");
        this.board = board;
    }

    /** Tells this listener whenever a job has begun or is over. */
    public void listen(Runnable whenBusyOrFree) {
        listener = whenBusyOrFree;
    }

    public boolean isBusy() {
        return running.isPresent();
    }

    /**
     * Begins a job that goes on to its end.
     *
     * @param name of the job, for people
     * @param done given what the work came to, on the event thread; answers with what to say about it
     * @param failed given what went wrong, on the event thread; answers with what to say about it
     * @throws IllegalStateException if another job is not over yet
     */
    public <T> void begin(String name, Work<T> work, Done<T> done, Failed failed) {
        begin(name, new Job<>(work, done, failed, says.text("job-broken"), this::over, board::progress), false);
    }

    /**
     * Begins a job that can be asked to give up: it looks at {@link Worker#cancelled} now and then, and what it comes to says
     * whether it did. Otherwise as {@link #begin}.
     */
    public <T> void beginStoppable(String name, Work<T> work, Done<T> done, Failed failed) {
        begin(name, new Job<>(work, done, failed, says.text("job-broken"), this::over, board::progress), true);
    }

    private void begin(String name, Job<?> job, boolean stoppable) {
        if (isBusy()) {
            throw new IllegalStateException("another job is not over yet");
        }
        running = Optional.of(job);
        // Before anybody is told: whatever goes wrong in the telling, the job is over one day and the next can begin.
        job.execute();
        board.begin(name, stoppable ? Optional.of(job::askToStop) : Optional.empty());
        listener.run();
    }

    private void over(String outcome) {
        running = Optional.empty();
        board.end(outcome);
        listener.run();
    }

    /** Takes what the work came to, and says so. A job is over also where this throws. */
    public interface Done<T> {
        String with(T result);
    }

    /** Takes what went wrong, and says so. */
    public interface Failed {
        String because(Throwable problem);
    }

    private static final class Job<T> extends SwingWorker<T, Void> implements Worker {
        private final Work<T> work;
        private final Done<T> done;
        private final Failed failed;
        private final String broken;
        private final Consumer<String> over;
        private volatile boolean askedToStop;

        Job(Work<T> work, Done<T> done, Failed failed, String broken, Consumer<String> over, IntConsumer shown) {
            this.work = work;
            this.done = done;
            this.failed = failed;
            this.broken = broken;
            this.over = over;
            addPropertyChangeListener(event -> {
                if (event.getPropertyName().equals("progress") && !isDone()) {
                    shown.accept((Integer) event.getNewValue());
                }
            });
        }

        /** Asks; the work itself gives up when it can, so nobody is told that it has while it has not. */
        void askToStop() {
            askedToStop = true;
        }

        @Override
        protected T doInBackground() throws Exception {
            return work.run(this);
        }

        @Override
        public void progress(int percent) {
            setProgress(Math.max(0, Math.min(100, percent)));
        }

        @Override
        public boolean cancelled() {
            return askedToStop;
        }

        @Override
        protected void done() {
            String outcome = broken;
            Throwable mistake = null;
            try {
                outcome = done.with(get());
            } catch (ExecutionException e) {
                outcome = failed.because(e.getCause());
                mistake = e.getCause();
            } catch (InterruptedException e) {
                // The result is there when done() is called, so nobody waits here.
                Thread.currentThread().interrupt();
                outcome = failed.because(e);
            } finally {
                // Also where the outcome could not be taken; the mistake itself is told of by the window.
                over.accept(outcome);
            }
            passOn(mistake);
        }

        /** A problem that nobody could foresee goes on; one with files, or being asked to stop, was foreseen. */
        private static void passOn(Throwable problem) {
            if (problem instanceof Error error) {
                throw error;
            }
            if (problem instanceof RuntimeException mistake && !(problem instanceof CancellationException)) {
                throw mistake;
            }
        }
    }
}
