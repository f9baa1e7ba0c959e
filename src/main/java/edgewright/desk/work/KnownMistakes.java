package edgewright.desk.work;

import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** The mistakes in the program that were met, so that one that comes again and again, as in painting, is told of once. */
public final class KnownMistakes {
    private static final String OURS = "edgewright.";

    /**
     * What was thrown, and by which steps from a place in our own code on: by how many ways one comes to that place makes no other
     * mistake, as a part is painted by itself or with what it lies on. The message may differ from time to time.
     */
    private record Mistake(Class<?> kind, List<StackTraceElement> steps) {}

    private final Set<Mistake> met = new HashSet<>();

    /** Notes a mistake; whether it was not met before. */
    public boolean isNew(Throwable problem) {
        List<StackTraceElement> all = Arrays.asList(problem.getStackTrace());
        int ours = IntStream.range(0, all.size())
                .filter(i -> all.get(i).getClassName().startsWith(OURS))
                .findFirst()
                .orElse(all.size() - 1);
        return met.add(new Mistake(problem.getClass(), List.copyOf(all.subList(0, ours + 1))));
    }
}
