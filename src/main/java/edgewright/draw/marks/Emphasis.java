package edgewright.draw.marks;

import edgewright.chart.Place;
import edgewright.check.Finding;
import edgewright.check.Severity;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/**
 * What is to be looked at in a drawing: stitches are ringed and numbered, rounds get the number beside them.
 *
 * @param flags in the order of their numbers
 */
public record Emphasis(List<Flag> flags) {
    /** Nothing in particular. */
    public static final Emphasis NONE = new Emphasis(List.of());

    /**
     * One numbered thing to look at: a stitch, or else a round as a whole.
     *
     * @param number its number in the list that goes with the drawing, from 1
     * @param stitch ringed wherever it is drawn
     * @param round the round it is about as a whole
     */
    public record Flag(int number, Severity severity, Optional<Place> stitch, OptionalInt round) {
        /** A flag on a stitch. */
        public static Flag at(int number, Severity severity, Place stitch) {
            return new Flag(number, severity, Optional.of(stitch), OptionalInt.empty());
        }

        /** A flag on a round. */
        public static Flag in(int number, Severity severity, int round) {
            return new Flag(number, severity, Optional.empty(), OptionalInt.of(round));
        }
    }

    public Emphasis {
        flags = List.copyOf(flags);
    }

    /**
     * The findings of a verdict, each with its number in that list, from 1. What is about a side or the whole chart keeps its
     * number but has nothing to be drawn at.
     */
    public static Emphasis of(List<Finding> findings) {
        List<Flag> flags = new ArrayList<>();
        for (Finding finding : findings) {
            int number = flags.size() + 1;
            Optional<Place> stitch = finding.place().oneStitch();
            OptionalInt round =
                    stitch.isPresent() ? OptionalInt.empty() : finding.place().inRound();
            flags.add(new Flag(number, finding.severity(), stitch, round));
        }
        return new Emphasis(flags);
    }

    /** The flags of each round as a whole that has any, in the order of their numbers. */
    public Map<Integer, List<Flag>> byRound() {
        return flags.stream()
                .filter(flag -> flag.round().isPresent())
                .collect(Collectors.groupingBy(flag -> flag.round().getAsInt()));
    }

    /** The flags of each stitch that has any, in the order of their numbers. */
    public Map<Place, List<Flag>> byStitch() {
        Map<Place, List<Flag>> found = new HashMap<>();
        for (Flag flag : flags) {
            flag.stitch()
                    .ifPresent(place -> found.computeIfAbsent(place, each -> new ArrayList<>(1))
                            .add(flag));
        }
        return found;
    }
}
