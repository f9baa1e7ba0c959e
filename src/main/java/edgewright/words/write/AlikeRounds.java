package edgewright.words.write;

import edgewright.words.tree.Instructions;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.StartMarkers;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Says once what is worked more than once. Rounds one after the other with the same words stand together; a later round with
 * the words of an earlier one is worked 'as round 5', where that saves a maker more than it costs to turn back.
 *
 * <p>Only a round that is worked alike on all sides is ever referred to, and only one that is told in full. Rounds that start
 * above markers are alike if they have the mark of the start at the same place and start as far after their markers. Rounds
 * with others between them never share a title: a maker works down the page, and would come to the later ones too soon.
 */
final class AlikeRounds {
    /** With fewer runs a round is told again sooner than it is looked up. */
    private static final int FEWEST_RUNS = 4;

    /** With more yarns to name, a title is longer than the words that it saves. */
    private static final int MOST_YARNS = 6;

    private final Optional<StartMarkers> markers;

    private AlikeRounds(Optional<StartMarkers> markers) {
        this.markers = markers;
    }

    /** What two rounds that are worked alike have in common. */
    private record Work(SideInstructions stretch, int cornerChains, Optional<StartMark> mark, int movedOn) {
        boolean isWorthTurningBack() {
            return stretch.runs().limit(FEWEST_RUNS).count() == FEWEST_RUNS;
        }
    }

    private Work work(WrittenRound round) {
        return new Work(round.stretch(), round.cornerChains(), round.start().map(WrittenStart::mark), movedOn(round));
    }

    /** How many stitches after its marker a round starts; 0 if at a corner. */
    private int movedOn(WrittenRound round) {
        return round.start()
                .map(start -> start.stitch() - markers.orElseThrow().joins(round.number()))
                .orElse(0);
    }

    /** The same pattern, each round told in full only where it is not as one before it. */
    static Instructions referring(Instructions pattern) {
        return pattern.withRounds(new AlikeRounds(pattern.markers()).referring(pattern.rounds()));
    }

    private List<WrittenRound> referring(List<WrittenRound> rounds) {
        List<WrittenRound> referring = new ArrayList<>();
        Map<Work, WrittenRound.InFull> told = new HashMap<>();
        List<WrittenRound> title = new ArrayList<>();
        for (WrittenRound round : rounds) {
            WrittenRound said = round instanceof WrittenRound.InFull here ? said(here, title, told) : round;
            if (title.isEmpty() || !standsWith(said, title.get(0))) {
                title.clear();
            }
            title.add(said);
            referring.add(said);
        }
        return referring;
    }

    /**
     * What is said of a round that could be told in full.
     *
     * @param title the rounds before it, as far as they stand under one title
     * @param told the rounds that are told in full, to which this one is added if it is a new one
     */
    private WrittenRound said(WrittenRound.InFull here, List<WrittenRound> title, Map<Work, WrittenRound.InFull> told) {
        Work work = work(here);
        Optional<WrittenRound.InFull> before = title.stream()
                .findFirst()
                .flatMap(AlikeRounds::told)
                .filter(one -> work(one).equals(work));
        if (before.isPresent()) {
            return mayBeNamedWith(here, title) ? as(here, before.get()) : here;
        }
        Optional<WrittenRound.InFull> earlier = Optional.ofNullable(told.putIfAbsent(work, here));
        return earlier.filter(one -> work.isWorthTurningBack())
                .<WrittenRound>map(one -> as(here, one))
                .orElse(here);
    }

    private static WrittenRound as(WrittenRound.InFull here, WrittenRound.InFull told) {
        return new WrittenRound.AsRound(here.number(), here.yarn(), here.side(), told, here.start());
    }

    private static boolean mayBeNamedWith(WrittenRound here, List<WrittenRound> title) {
        List<String> yarns = Stream.concat(title.stream(), Stream.of(here))
                .map(WrittenRound::yarn)
                .toList();
        return TitleWording.named(yarns) <= MOST_YARNS;
    }

    /** The round that is told in full for this one; empty if it cannot be referred to. */
    private static Optional<WrittenRound.InFull> told(WrittenRound round) {
        if (round instanceof WrittenRound.AsRound again) {
            return Optional.of(again.as());
        }
        return round instanceof WrittenRound.InFull here ? Optional.of(here) : Optional.empty();
    }

    /** The rounds of a pattern in their order, those that stand under one title together. */
    static List<List<WrittenRound>> together(Instructions pattern) {
        AlikeRounds alike = new AlikeRounds(pattern.markers());
        List<List<WrittenRound>> together = new ArrayList<>();
        for (WrittenRound round : pattern.rounds()) {
            List<WrittenRound> last = together.isEmpty() ? List.of() : together.get(together.size() - 1);
            if (!last.isEmpty() && alike.standsWith(round, last.get(0))) {
                last.add(round);
            } else {
                together.add(new ArrayList<>(List.of(round)));
            }
        }
        return together;
    }

    /** Whether a round can stand under one title with the round before it. */
    private boolean standsWith(WrittenRound round, WrittenRound before) {
        return round instanceof WrittenRound.AsRound again
                && told(before).filter(again.as()::equals).isPresent()
                && movedOn(round) == movedOn(before)
                && counts(round) == counts(before)
                && round.side().multiple().isEmpty()
                && before.side().multiple().isEmpty();
    }

    private static int counts(WrittenRound round) {
        return round.side().counts().size();
    }

    /**
     * By how many stitches every side grows from each of these rounds to the next, in all sizes; empty where they do not all
     * grow alike.
     */
    static Optional<Integer> growth(List<WrittenRound> rounds) {
        return growthOf(rounds.stream().map(WrittenRound::side).toList());
    }

    /** The same, of what is said of the sides of each round. */
    static Optional<Integer> growthOf(List<SideSize> sides) {
        SideSize first = sides.get(0);
        if (sides.size() < 2
                || first.counts().isEmpty()
                || sides.get(1).counts().isEmpty()) {
            return Optional.empty();
        }
        int more = sides.get(1).counts().get(0).top() - first.counts().get(0).top();
        for (int i = 1; i < sides.size(); i++) {
            int grown = more * i;
            List<?> expected = first.counts().stream()
                    .map(each -> each.map(stitches -> stitches + grown))
                    .toList();
            if (!sides.get(i).counts().equals(expected)) {
                return Optional.empty();
            }
        }
        return Optional.of(more).filter(by -> by > 0);
    }
}
