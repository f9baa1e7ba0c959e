package edgewright.desk.scene;

import edgewright.desk.scene.ScenePainter.Painted;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;

/**
 * The painting of the border beside the event thread: one at a time, and after it at most one more, for the latest order.
 * What was ordered between the two is never painted, so nothing queues up however fast somebody draws.
 */
final class SceneWork {
    private final ScenePainter painter = new ScenePainter();
    private final Executor beside;
    private final Executor events;
    private final Consumer<Painted> done;
    private Optional<SceneOrder> going = Optional.empty();
    private Optional<SceneOrder> waiting = Optional.empty();
    private volatile boolean outdated;

    /**
     * @param beside runs the painting, one after the other
     * @param events brings its outcome back to the thread on which orders are given
     * @param done is given each picture there
     */
    SceneWork(Executor beside, Executor events, Consumer<Painted> done) {
        this.beside = beside;
        this.events = events;
        this.done = done;
    }

    /** Has this painted, unless something else is ordered before it is begun. */
    void order(SceneOrder order) {
        if (going.filter(order::equals).isPresent()) {
            waiting = Optional.empty();
        } else if (going.isPresent()) {
            waiting = Optional.of(order);
            // An older chart is worth seeing while somebody draws on; another part or size of it is not.
            outdated = !going.get().liesLike(order);
        } else {
            begin(order);
        }
    }

    private void begin(SceneOrder order) {
        going = Optional.of(order);
        outdated = false;
        beside.execute(() -> {
            Optional<Painted> painted = Optional.empty();
            try {
                painted = painter.paint(order, () -> outdated);
            } finally {
                Optional<Painted> outcome = painted;
                events.execute(() -> over(outcome));
            }
        });
    }

    private void over(Optional<Painted> painted) {
        going = Optional.empty();
        Optional<SceneOrder> next = waiting;
        waiting = Optional.empty();
        painted.ifPresent(done);
        next.ifPresent(this::begin);
    }
}
