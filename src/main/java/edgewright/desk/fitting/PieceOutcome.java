package edgewright.desk.fitting;

import edgewright.chart.Side;
import edgewright.fit.Targets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What comes of a piece and a border.
 *
 * @param headline in a few words
 * @param notes what else is to be said of the whole
 * @param warnings what a maker should know before the work
 * @param sides one a side in the order in which the hand comes to them; none where there is nothing to say of the sides
 * @param rounds in which rounds to count and to change
 * @param size how large the whole becomes
 * @param wrong the side on which something cannot be read, or that is too short
 * @param targets the counts that close
 */
public record PieceOutcome(
        Mood mood,
        String headline,
        List<String> notes,
        List<String> warnings,
        List<OfSide> sides,
        List<String> rounds,
        List<String> size,
        List<Side> wrong,
        Optional<Targets> targets) {
    /** How it stands. */
    public enum Mood {
        /** Something is still to be typed. */
        ASKING,
        /** Nothing need be changed. */
        FITS,
        /** It fits after some changes. */
        CHANGES,
        /** It does not fit. */
        NO,
        /** Something typed cannot be read. */
        MISTAKE
    }

    /**
     * What comes of one side.
     *
     * @param wanted the count that closes, in the way of counting that the piece is asked about
     * @param change stitches to add, or to lose if below 0
     * @param smaller the next smaller count that closes; empty if there is none
     * @param marks from the corner just turned on
     * @param words what to do, a sentence or two
     */
    public record OfSide(
            Side side,
            int wanted,
            int change,
            int repeats,
            OptionalInt smaller,
            int larger,
            List<Mark> marks,
            List<String> words) {
        public OfSide {
            marks = List.copyOf(marks);
            words = List.copyOf(words);
        }
    }

    /**
     * A mark at a side of the drawing.
     *
     * @param along how far along the side from the corner just turned, 0 to 1
     */
    public record Mark(Kind kind, double along, String label) {
        /** What is to be done there. */
        public enum Kind {
            INCREASE,
            DECREASE,
            QUARTER
        }
    }

    public PieceOutcome {
        notes = List.copyOf(notes);
        warnings = List.copyOf(warnings);
        sides = List.copyOf(sides);
        rounds = List.copyOf(rounds);
        size = List.copyOf(size);
        wrong = List.copyOf(wrong);
    }

    /** Nothing but something to say. */
    static PieceOutcome saying(Mood mood, String headline, List<String> notes, List<Side> wrong) {
        return new PieceOutcome(
                mood, headline, notes, List.of(), List.of(), List.of(), List.of(), wrong, Optional.empty());
    }

    /** What comes of this side; empty where there is nothing to say of the sides. */
    public Optional<OfSide> of(Side side) {
        return sides.stream().filter(one -> one.side() == side).findFirst();
    }
}
