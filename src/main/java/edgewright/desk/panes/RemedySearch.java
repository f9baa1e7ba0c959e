package edgewright.desk.panes;

import edgewright.check.Finding;
import edgewright.check.MendedKind;
import edgewright.check.Remedy;
import edgewright.check.Verdict;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Supplier;
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
        search(finding, finding::remedies, found, notYet);
    }

    /** In the same way, what comes of mending all findings of the rule of the finding that was asked about last. */
    void mendAll(Verdict verdict, Finding finding, Consumer<MendedKind> found, Runnable notYet) {
        search(finding, () -> verdict.mendAll(finding.rule()), found, notYet);
    }

    private <T> void search(Finding finding, Supplier<T> work, Consumer<T> found, Runnable notYet) {
        FutureTask<Optional<T>> search =
                new FutureTask<>(() -> isWanted(finding) ? Optional.of(work.get()) : Optional.empty());
        beside.execute(search);
        try {
            search.get(PATIENCE_MS, TimeUnit.MILLISECONDS).ifPresent(found);
        } catch (TimeoutException e) {
            notYet.run();
            // It works one search after the other, so this one is over when its turn comes.
            beside.execute(() -> SwingUtilities.invokeLater(() -> {
                if (isWanted(finding)) {
                    outcome(search).ifPresent(found);
                }
            }));
        } catch (ExecutionException | InterruptedException e) {
            throw failed(e);
        }
    }

    private static <T> T outcome(FutureTask<T> over) {
        try {
            return over.get();
        } catch (ExecutionException | InterruptedException e) {
            throw failed(e);
        }
    }

    private static IllegalStateException failed(Exception problem) {
        if (problem instanceof InterruptedException) {
            Thread.currentThread().interrupt();
        }
        return new IllegalStateException("remedies cannot be found", problem);
    }

    /** It is this very one: an equal finding of a later chart has remedies of its own. */
    @SuppressWarnings("ReferenceEquality")
    private boolean isWanted(Finding finding) {
        return finding == wanted;
    }
}
