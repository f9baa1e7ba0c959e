package edgewright.words.said;

import edgewright.chart.Side;
import edgewright.words.tree.StartMark.Part;
import edgewright.words.tree.StretchPlace;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What a piece of the words of a round says: all of the round, or some stitches of its sides. */
public sealed interface Said {
    /** Whether it says the stitch that the words of this side tell of at this place. */
    boolean says(Side side, StretchPlace place);

    /** The whole round, as in 'as round 5'. */
    record WholeRound() implements Said {
        @Override
        public boolean says(Side side, StretchPlace place) {
            return true;
        }
    }

    /**
     * Stitches side by side in one part of the words of a side, and the same again as often as the brackets say in which they
     * stand.
     *
     * @param side the side of which alone it is said; empty where all sides are told alike
     * @param first the first of them, counted as in {@link StretchPlace}
     * @param count how many stand side by side, 1 or more
     * @param again the brackets in which they stand, the inner one first
     */
    record Stitches(Optional<Side> side, Part part, int first, int count, List<Again> again) implements Said {
        /**
         * Worked over and over.
         *
         * @param times how often, the first time counted
         * @param apart how many stitches are worked each time
         */
        public record Again(int times, int apart) {}

        public Stitches {
            Objects.requireNonNull(side);
            Objects.requireNonNull(part);
            again = List.copyOf(again);
            if (first < 1 || count < 1) {
                throw new IllegalArgumentException(count + " stitches from stitch " + first);
            }
        }

        /** One part of a side, before any stitch of it is told: so many stitches from its beginning. */
        public static Stitches of(Optional<Side> side, Part part, long count) {
            return new Stitches(side, part, 1, counted(count), List.of());
        }

        /** So many of these stitches, after as many of them have been told. */
        public Stitches within(long told, long stitches) {
            // Words by others can ask for more stitches than can be counted; nobody marks those.
            return new Stitches(side, part, counted(first + told), counted(stitches), again);
        }

        private static int counted(long stitches) {
            return (int) Math.max(1, Math.min(Integer.MAX_VALUE, stitches));
        }

        /** These stitches as they are worked once, where brackets have them worked that often. */
        public Stitches once(int times) {
            List<Again> more = new ArrayList<>();
            more.add(new Again(times, Math.max(1, count / times)));
            more.addAll(again);
            return new Stitches(side, part, first, Math.max(1, count / times), more);
        }

        @Override
        public boolean says(Side along, StretchPlace place) {
            if (place.part() != part || side.filter(only -> only != along).isPresent()) {
                return false;
            }
            return nth(place) > 0;
        }

        /** Which of the stitches side by side the words tell of there, counted from 1; 0 for none of them. */
        public int nth(StretchPlace place) {
            int past = place.stitch() - first;
            for (int i = again.size() - 1; i >= 0 && past >= 0; i--) {
                Again bracket = again.get(i);
                past = past / bracket.apart() < bracket.times() ? past % bracket.apart() : -1;
            }
            return past >= 0 && past < count ? past + 1 : 0;
        }
    }
}
