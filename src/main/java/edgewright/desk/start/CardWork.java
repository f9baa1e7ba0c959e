package edgewright.desk.start;

import edgewright.texts.Language;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import javax.swing.SwingWorker;

/** Looks at the charts of cards beside the event thread, one after the other, and has each card show what came of it. */
final class CardWork extends SwingWorker<Void, CardWork.Looked> {
    private final List<StartCard> cards;
    private final double scale;
    private final Language language;

    record Looked(StartCard card, CardContent content) {}

    CardWork(List<StartCard> cards, double scale, Language language) {
        this.cards = List.copyOf(cards);
        this.scale = scale;
        this.language = language;
    }

    @Override
    protected Void doInBackground() {
        for (StartCard card : cards) {
            if (isCancelled()) {
                return null;
            }
            publish(new Looked(card, card.stands().look(scale, language)));
        }
        return null;
    }

    @Override
    protected void process(List<Looked> looked) {
        looked.forEach(each -> each.card().show(each.content()));
    }

    @Override
    protected void done() {
        try {
            get();
        } catch (CancellationException e) {
            // The page is not seen any more.
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        }
    }
}
