package edgewright.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Stitches taken off a side as a rectangle of rounds and fabric columns, to be worked elsewhere. Towards a corner, where the
 * rectangle reaches beyond the side, it holds nothing. It may go round one corner.
 *
 * @param rounds a row a round, the innermost first; in each the letters of its stitches in working order, {@link #NOTHING}
 *     where there is none, and {@link #CORNER} at the same place of every row if it goes round a corner. All rows are of one
 *     length, and neither is 0
 */
public record Motif(List<String> rounds) {
    /** Stands where a motif has no stitch. */
    public static final char NOTHING = '.';
    /** Stands for the chains of the corner that a motif goes round. */
    public static final char CORNER = '+';

    public Motif {
        rounds = List.copyOf(rounds);
        if (!isMotif(rounds)) {
            throw new IllegalArgumentException("these are no rounds of one motif: " + rounds);
        }
    }

    private static boolean isMotif(List<String> rounds) {
        return !rounds.isEmpty()
                && !rounds.get(0).isEmpty()
                && rounds.stream().allMatch(round -> isLike(round, rounds.get(0)));
    }

    /** Whether a round is of known letters, as long as another one, and has its corner where that one has it. */
    public static boolean isLike(String round, String other) {
        return round.length() == other.length()
                && round.chars().allMatch(letter -> isKnown((char) letter))
                && round.indexOf(CORNER) == other.indexOf(CORNER)
                && round.indexOf(CORNER) == round.lastIndexOf(CORNER);
    }

    /** Whether a letter may stand in a motif. */
    public static boolean isKnown(char letter) {
        return letter == NOTHING || letter == CORNER || Stitch.ofLetter(letter).isPresent();
    }

    /**
     * The stitches between two opposite corners of a rectangle, both included.
     *
     * @param side the side that the two stand on
     * @param repeats how often the repeat is worked on that side
     * @param one in a charted round, as the other one
     */
    public static Motif of(Chart chart, Side side, int repeats, SidePlace one, SidePlace other) {
        return of(
                chart,
                side,
                repeats,
                new RoundRun(Math.min(one.round(), other.round()), Math.max(one.round(), other.round())),
                Math.min(one.fabricColumn(), other.fabricColumn()),
                Math.max(one.fabricColumn(), other.fabricColumn()));
    }

    /**
     * Rounds side by side.
     *
     * @param first the innermost, from 1
     * @param last the outermost
     */
    public record RoundRun(int first, int last) {}

    /**
     * The stitches of some rounds from one fabric column to another, both included. They need not all be on the border.
     *
     * @param repeats how often the repeat is worked on that side
     */
    public static Motif of(Chart chart, Side side, int repeats, RoundRun taken, int firstColumn, int lastColumn) {
        List<String> rounds = new ArrayList<>();
        for (int r = taken.first(); r <= taken.last(); r++) {
            StringBuilder letters = new StringBuilder();
            for (int column = firstColumn; column <= lastColumn; column++) {
                letters.append(placeAt(chart, chart.shape(side), repeats, r, column)
                        .map(place -> chart.stitch(place).letter())
                        .orElse(NOTHING));
            }
            rounds.add(letters.toString());
        }
        return new Motif(rounds);
    }

    /**
     * The stitches of some rounds round the corner at the end of a side.
     *
     * @param side that ends in the corner
     * @param repeats how often the repeat is worked on each side
     * @param firstColumn the fabric column of that side from which on they are taken
     * @param lastColumn the fabric column of the next side up to which they are taken
     */
    public static Motif roundCorner(
            Chart chart, Side side, int repeats, RoundRun taken, int firstColumn, int lastColumn) {
        // The outermost stitches at the corner stand in the last column of the one side and the first of the other.
        int end = chart.shape(side).stitches(taken.last(), repeats) - taken.last();
        Motif before = of(chart, side, repeats, taken, firstColumn, end);
        Motif after = of(chart, side.next(), repeats, taken, 1 - taken.last(), lastColumn);
        List<String> rounds = new ArrayList<>();
        for (int i = 0; i < before.rounds().size(); i++) {
            rounds.add(before.rounds().get(i) + CORNER + after.rounds().get(i));
        }
        return new Motif(rounds);
    }

    /** A line a round, the outermost first, as a chart shows them. */
    public String text() {
        List<String> lines = new ArrayList<>(rounds);
        Collections.reverse(lines);
        return String.join("\n", lines) + "\n";
    }

    /** How many fabric columns it has. */
    public int columns() {
        return rounds.get(0).length();
    }

    /** This motif as in a mirror: what was worked last in each round is worked first. */
    public Motif reversed() {
        return new Motif(rounds.stream()
                .map(round -> new StringBuilder(round).reverse().toString())
                .toList());
    }

    /** This motif with its innermost round outermost. Not for one that goes round a corner: there rounds grow outwards. */
    public Motif upsideDown() {
        if (corner().isPresent()) {
            throw new IllegalArgumentException("rounds that grow at a corner cannot be turned upside down");
        }
        List<String> turned = new ArrayList<>(rounds);
        Collections.reverse(turned);
        return new Motif(turned);
    }

    /** How many fabric columns stand before the corner; empty if it does not go round one. */
    public OptionalInt corner() {
        int at = rounds.get(0).indexOf(CORNER);
        return at < 0 ? OptionalInt.empty() : OptionalInt.of(at);
    }

    /** Its first so many rounds, the innermost first. */
    public Motif withRounds(int number) {
        return new Motif(rounds.subList(0, number));
    }

    /**
     * What comes of a motif in a chart, and what does not.
     *
     * @param stitches where its stitches come to lie
     * @param roundsBeyond how many of its rounds lie beyond the outermost round of the chart, or inside the first
     * @param stitchesBeyond how many of its stitches in the other rounds lie beyond the ends of the side
     * @param stitchesOver how many of its stitches gave way to another one of it, at the same place of the chart
     */
    public record Placed(Map<Place, Stitch> stitches, int roundsBeyond, int stitchesBeyond, int stitchesOver) {
        public Placed {
            stitches = Map.copyOf(stitches);
        }
    }

    /**
     * Where its stitches come to lie in a chart. What reaches beyond the side or the outermost round is left out. Where it is
     * wider than the repeat, one place of the chart is met several times; the last in working order counts.
     *
     * @param repeats how often the repeat is worked on each side
     */
    public Placed placed(Chart chart, MotifSpot spot, int repeats) {
        Map<Place, Stitch> stitches = new HashMap<>();
        int roundsBeyond = 0;
        int beyond = 0;
        int over = 0;
        for (int i = 0; i < rounds.size(); i++) {
            int round = spot.round() + i;
            if (round < 1 || round > chart.rounds().size()) {
                roundsBeyond++;
                continue;
            }
            for (int j = 0; j < columns(); j++) {
                Optional<Stitch> stitch = Stitch.ofLetter(rounds.get(i).charAt(j));
                if (stitch.isEmpty()) {
                    continue;
                }
                Optional<Place> place = placeOf(chart, spot, repeats, i, j);
                if (place.isEmpty()) {
                    beyond++;
                } else {
                    Stitch before = stitches.put(place.get(), stitch.get());
                    over += before == null || before == stitch.get() ? 0 : 1;
                }
            }
        }
        return new Placed(stitches, roundsBeyond, beyond, over);
    }

    /**
     * Where its stitches come to lie if it is worked over and over along the whole side, before and after the spot. Nothing lies
     * beyond; where the repeat is no multiple of the motif, some of its stitches are not met.
     *
     * @throws IllegalArgumentException if it goes round a corner
     */
    public Placed repeated(Chart chart, MotifSpot spot, int repeats) {
        if (corner().isPresent()) {
            throw new IllegalArgumentException("what goes round a corner cannot be repeated along a side");
        }
        Map<Place, Stitch> stitches = new HashMap<>();
        SideShape shape = chart.shape(spot.side());
        int roundsBeyond = 0;
        int over = 0;
        for (int i = 0; i < rounds.size(); i++) {
            int round = spot.round() + i;
            if (round < 1 || round > chart.rounds().size()) {
                roundsBeyond++;
                continue;
            }
            for (int p = 1; p <= shape.stitches(round, repeats); p++) {
                int j = Math.floorMod(p - round - spot.column(), columns());
                Optional<Stitch> stitch = Stitch.ofLetter(rounds.get(i).charAt(j));
                Optional<Place> place = placeAt(chart, shape, repeats, round, p - round);
                if (stitch.isPresent() && place.isPresent()) {
                    Stitch before = stitches.putIfAbsent(place.get(), stitch.get());
                    over += before == null || before == stitch.get() ? 0 : 1;
                }
            }
        }
        return new Placed(stitches, roundsBeyond, 0, over);
    }

    /** The place of the j-th letter of its i-th round, from 0, if the border has a stitch there. */
    private Optional<Place> placeOf(Chart chart, MotifSpot spot, int repeats, int i, int j) {
        int round = spot.round() + i;
        if (corner().isEmpty()) {
            return placeAt(chart, chart.shape(spot.side()), repeats, round, spot.column() + j);
        }
        // A stitch keeps its distance from the corner, which is one less for each round nearer to the piece.
        int inwards = rounds.size() - 1 - i;
        int from = Math.abs(j - corner().getAsInt()) - inwards;
        Side side = j < corner().getAsInt() ? spot.side() : spot.side().next();
        SideShape shape = chart.shape(side);
        int stitch = side == spot.side() ? shape.stitches(round, repeats) + 1 - from : from;
        return from < 1 ? Optional.empty() : placeAt(chart, shape, repeats, round, stitch - round);
    }

    private static Optional<Place> placeAt(Chart chart, SideShape shape, int repeats, int round, int fabricColumn) {
        int stitch = fabricColumn + round;
        return round >= 1 && round <= chart.rounds().size() && stitch >= 1 && stitch <= shape.stitches(round, repeats)
                ? Optional.of(shape.placeOf(new SidePlace(round, stitch), repeats))
                        .filter(chart::has)
                : Optional.empty();
    }
}
