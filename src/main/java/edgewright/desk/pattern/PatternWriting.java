package edgewright.desk.pattern;

import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/** Writes patterns beside the event thread. Only the one that was asked for last is written to the end and shown. */
final class PatternWriting {
    private final ThreadPoolExecutor beside =
            new ThreadPoolExecutor(1, 1, 5, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
                Thread thread = new Thread(work, "pattern");
                thread.setDaemon(true);
                return thread;
            });
    private final AtomicLong asked = new AtomicLong();

    PatternWriting() {
        beside.allowCoreThreadTimeOut(true);
    }

    /** Nobody waits for a pattern any more. */
    void forget() {
        asked.incrementAndGet();
    }

    /**
     * Writes a pattern.
     *
     * @param work off the event thread
     * @param shown is given it on the event thread, unless another one is asked for meanwhile
     */
    void write(Supplier<ShownPattern> work, Consumer<ShownPattern> shown) {
        long number = asked.incrementAndGet();
        beside.execute(() -> {
            if (asked.get() != number) {
                return;
            }
            ShownPattern written = work.get();
            SwingUtilities.invokeLater(() -> {
                if (asked.get() == number) {
                    shown.accept(written);
                }
            });
        });
    }
}
