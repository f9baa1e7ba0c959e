package edgewright.desk.work;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Queue;
import java.util.function.Consumer;

/**
 * Those who are told what has happened to something, one piece of news after the other. What a listener brings about in its
 * turn is told when everybody knows of what came before, so all hear the same in the same order. Whoever is told looks at the
 * thing itself, which may have gone on by then.
 *
 * <p>For one thread only.
 */
public final class Listeners<T> {
    private final List<Consumer<? super T>> told = new ArrayList<>();
    private final Queue<T> waiting = new ArrayDeque<>();
    private boolean telling;

    /** Tells this listener of everything from now on, after those who were there before. */
    public Listening add(Consumer<? super T> listener) {
        // The same listener may be there twice; its end is of this time only.
        Consumer<T> once = listener::accept;
        told.add(once);
        return () -> told.remove(once);
    }

    /** Tells all of them. */
    public void tell(T news) {
        waiting.add(news);
        if (telling) {
            return;
        }
        telling = true;
        try {
            while (!waiting.isEmpty()) {
                tellOf(waiting.remove());
            }
        } finally {
            // Where a listener fails, what it brought about would only come too late.
            waiting.clear();
            telling = false;
        }
    }

    private void tellOf(T news) {
        for (Consumer<? super T> listener : List.copyOf(told)) {
            if (told.contains(listener)) {
                listener.accept(news);
            }
        }
    }

    /** Tells nobody any more; who asks from now on is told. */
    public void endAll() {
        told.clear();
        waiting.clear();
    }
}
