package edgewright.desk.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import edgewright.texts.English;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Test;

/** Work beside the event thread: one job at a time, told of as it goes, and stopped only when it has really stopped. */
class JobsTest {
    private final List<String> said = new CopyOnWriteArrayList<>();
    private final CountDownLatch over = new CountDownLatch(1);
    private final Jobs jobs = new Jobs(
            new Jobs.Board() {
                private Optional<Runnable> stop = Optional.empty();

                @Override
                public void begin(String job, Optional<Runnable> canBeStopped) {
                    said.add(job + (canBeStopped.isPresent() ? ", can be stopped" : ""));
                    stop = canBeStopped;
                }

                @Override
                public void progress(int percent) {
                    said.add(percent + " %");
                    stop.ifPresent(Runnable::run);
                }

                @Override
                public void end(String outcome) {
                    said.add(outcome + " on the event thread: " + SwingUtilities.isEventDispatchThread());
                    over.countDown();
                }
            },
            English.LANGUAGE);

    @Test
    void aJobWorksBesideTheEventThreadAndEndsOnIt() throws Exception {
        onEventThread(() -> jobs.begin(
                "Opening",
                worker -> SwingUtilities.isEventDispatchThread(),
                beside -> "opened, worked on the event thread: " + beside + ",",
                Throwable::getMessage));
        await();

        assertThat(said)
                .containsExactly("Opening", "opened, worked on the event thread: false, on the event thread: true");
    }

    @Test
    void whatGoesWrongIsSaidAndTheNextJobCanBegin() throws Exception {
        onEventThread(() -> jobs.begin(
                "Saving",
                worker -> {
                    throw new IOException("the disk is full");
                },
                result -> "saved",
                Throwable::getMessage));
        await();

        assertThat(said).containsExactly("Saving", "the disk is full on the event thread: true");
        onEventThread(() -> assertThat(jobs.isBusy()).isFalse());
    }

    @Test
    void aJobThatIsAskedToStopSaysItselfWhetherItDid() throws Exception {
        onEventThread(() -> jobs.beginStoppable(
                "Publishing",
                worker -> {
                    worker.progress(40);
                    // The board asks it to stop as soon as it hears of that.
                    while (!worker.cancelled()) {
                        Thread.onSpinWait();
                    }
                    return "stopped";
                },
                result -> result,
                Throwable::getMessage));
        await();

        assertThat(said).containsExactly("Publishing, can be stopped", "40 %", "stopped on the event thread: true");
    }

    @Test
    void thereIsOneJobAtATime() throws Exception {
        CountDownLatch open = new CountDownLatch(1);
        onEventThread(() -> jobs.begin(
                "Saving", worker -> open.await(60, TimeUnit.SECONDS), result -> "saved", Throwable::getMessage));
        onEventThread(() -> assertThatThrownBy(
                        () -> jobs.begin("Opening", worker -> 1, result -> "opened", Throwable::getMessage))
                .isInstanceOf(IllegalStateException.class));
        open.countDown();
        await();

        assertThat(said).containsExactly("Saving", "saved on the event thread: true");
    }

    @Test
    void aJobWhoseOutcomeCannotBeTakenIsOverAllTheSame() throws Exception {
        List<String> met = new CopyOnWriteArrayList<>();
        onEventThread(() ->
                Thread.currentThread().setUncaughtExceptionHandler((thread, problem) -> met.add(problem.getMessage())));
        onEventThread(() -> jobs.begin(
                "Opening",
                worker -> 1,
                result -> {
                    throw new IllegalStateException("no such pane");
                },
                Throwable::getMessage));
        await();

        onEventThread(() -> assertThat(jobs.isBusy()).isFalse());
        onEventThread(() -> Thread.currentThread().setUncaughtExceptionHandler(null));
        assertThat(met).containsExactly("no such pane");
        assertThat(said).containsExactly("Opening", "Something went wrong in the program. on the event thread: true");
    }

    @Test
    void aJobWhoseBeginningCannotBeShownIsOverAllTheSame() throws Exception {
        onEventThread(() -> {
            jobs.listen(() -> {
                if (jobs.isBusy()) {
                    throw new IllegalStateException("no such action");
                }
            });
            assertThatThrownBy(() -> jobs.begin("Saving", worker -> 1, result -> "saved", Throwable::getMessage))
                    .hasMessage("no such action");
        });
        await();

        onEventThread(() -> assertThat(jobs.isBusy()).isFalse());
        assertThat(said).containsExactly("Saving", "saved on the event thread: true");
    }

    @Test
    void aMistakeInTheProgramIsSaidAndGoesOnWithItsCause() throws Exception {
        List<Throwable> met = new CopyOnWriteArrayList<>();
        IllegalStateException mistake = new IllegalStateException("no such round", new IOException("the disk is full"));
        onEventThread(() -> Thread.currentThread().setUncaughtExceptionHandler((thread, problem) -> met.add(problem)));
        onEventThread(() -> jobs.begin(
                "Publishing",
                worker -> {
                    throw mistake;
                },
                result -> "published",
                problem -> "not written"));
        await();

        onEventThread(() -> Thread.currentThread().setUncaughtExceptionHandler(null));
        assertThat(said).containsExactly("Publishing", "not written on the event thread: true");
        assertThat(met).containsExactly(mistake);
    }

    @Test
    void aChartIsSavedWhileItsPatternIsMade() throws Exception {
        Lanes lanes = new Lanes(lane -> new Silent(), English.LANGUAGE);
        CountDownLatch saved = new CountDownLatch(1);
        CountDownLatch published = new CountDownLatch(1);
        onEventThread(() -> {
            lanes.in(Lanes.Lane.EXPORT)
                    .begin(
                            "Publishing",
                            worker -> saved.await(60, TimeUnit.SECONDS),
                            inTime -> {
                                published.countDown();
                                return "saved meanwhile: " + inTime;
                            },
                            Throwable::getMessage);
            lanes.in(Lanes.Lane.FILE)
                    .begin(
                            "Saving",
                            worker -> 1,
                            result -> {
                                saved.countDown();
                                return "saved";
                            },
                            Throwable::getMessage);
            assertThat(lanes.in(Lanes.Lane.PREVIEW).isBusy()).isFalse();
            assertThat(lanes.isBusy()).isTrue();
        });

        assertThat(published.await(60, TimeUnit.SECONDS)).isTrue();
        assertThat(saved.getCount()).isZero();
        onEventThread(() -> assertThat(lanes.isBusy()).isFalse());
    }

    /** A board that nobody looks at. */
    private record Silent() implements Jobs.Board {
        @Override
        public void begin(String job, Optional<Runnable> stop) {}

        @Override
        public void progress(int percent) {}

        @Override
        public void end(String outcome) {}
    }

    private void await() throws InterruptedException {
        assertThat(over.await(60, TimeUnit.SECONDS)).isTrue();
    }

    private static void onEventThread(Runnable deed) throws Exception {
        SwingUtilities.invokeAndWait(deed);
    }
}
