package edgewright.desk.panes;

import edgewright.check.Finding;
import edgewright.check.Remedy;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import javax.swing.SwingUtilities;

/**
 * Finds what helps against a finding, beside the event thread: each remedy is tried on the whole chart, which takes a while on a
 * large one. Only the finding asked about last is answered.
 */
final class RemedySearch {
    /** On most charts the answer is there at once, and nothing flickers. */
    private static final long PATIENCE_MS = 4;

    private final ThreadPoolExecutor beside =
            new ThreadPoolExecutor(1, 1, 5, TimeUnit.SECONDS, new LinkedBlockingQueue<>(), work -> {
                Thread thread = new Thread(work, "remedies");
                thread.setDaemon(true);
                return thread;
            });
    private volatile Finding wanted;

    RemedySearch() {
        beside.allowCoreThreadTimeOut(true);
    }

    /** Nobody asks any more. */
    void forget() {
        wanted = null;
    }

    /**
     * Finds the remedies of a finding.
     *
     * @param found is given them on the event thread: before this ends, or later, unless another finding is asked about meanwhile
     * @param notYet is run before this ends if they are found later
     */
    void find(Finding finding, Consumer<List<Remedy>> found, Runnable notYet) {
        wanted = finding;
        CompletableFuture<List<Remedy>> answer =
                CompletableFuture.supplyAsync(() -> isWanted(finding) ? finding.remedies() : List.of(), beside);
        try {
            found.accept(answer.get(PATIENCE_MS, TimeUnit.MILLISECONDS));
        } catch (TimeoutException e) {
            notYet.run();
            answer.whenComplete((remedies, problem) -> SwingUtilities.invokeLater(() -> {
                if (isWanted(finding)) {
                    found.accept(answer.join());
                }
            }));
        } catch (ExecutionException e) {
            throw new IllegalStateException("remedies cannot be found", e.getCause());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** It is this very one: an equal finding of a later chart has remedies of its own. */
    @SuppressWarnings("ReferenceEquality")
    private boolean isWanted(Finding finding) {
        return finding == wanted;
    }
}
