package edgewright.desk.work;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The mistakes in the program that were met, so that one that comes again and again, as in painting, is told of once. */
public final class KnownMistakes {
    private static final int STEPS = 8;

    /** What was thrown, and by which steps it came about; the message may differ from time to time. */
    private record Mistake(Class<?> kind, List<StackTraceElement> steps) {}

    private final Set<Mistake> met = new HashSet<>();

    /** Notes a mistake; whether it was not met before. */
    public boolean isNew(Throwable problem) {
        List<StackTraceElement> steps =
                Arrays.stream(problem.getStackTrace()).limit(STEPS).toList();
        return met.add(new Mistake(problem.getClass(), steps));
    }
}
