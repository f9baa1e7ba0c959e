package edgewright.desk.jobs;

import edgewright.texts.Language;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;

/** The lanes in which jobs run side by side: in each there is one job at a time, and none waits for one in another lane. */
public final class Lanes {
    /** What is worked on in a lane. */
    public enum Lane {
        /** Charts are opened and saved. */
        FILE,
        /** What others are to read is made: patterns, pictures, words, and the proof of them. */
        EXPORT,
        /** What a window shows is worked out before anything is done with it. */
        PREVIEW
    }

    private final Map<Lane, Jobs> jobs = new EnumMap<>(Lane.class);

    /** Free lanes, each with its own board. */
    public Lanes(Function<Lane, Jobs.Board> boards, Language language) {
        for (Lane lane : Lane.values()) {
            jobs.put(lane, new Jobs(boards.apply(lane), language));
        }
    }

    /** The jobs of one lane. */
    public Jobs in(Lane lane) {
        return jobs.get(lane);
    }

    /** Tells this listener whenever a job has begun or is over in any lane. */
    public void listen(Runnable whenBusyOrFree) {
        jobs.values().forEach(each -> each.listen(whenBusyOrFree));
    }

    /** Whether a job runs in any lane. */
    public boolean isBusy() {
        return jobs.values().stream().anyMatch(Jobs::isBusy);
    }
}
