package edgewright.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Stitches taken off a side as a rectangle of rounds and fabric columns, to be worked elsewhere. Towards a corner, where the
 * rectangle reaches beyond the side, it holds nothing.
 *
 * @param rounds a row a round, the innermost first; in each the letters of its stitches in working order, and {@link #NOTHING}
 *     where there is none. All rows are of one length, and neither is 0
 */
public record Motif(List<String> rounds) {
    /** Stands where a motif has no stitch. */
    public static final char NOTHING = '.';

    public Motif {
        rounds = List.copyOf(rounds);
        if (!isMotif(rounds)) {
            throw new IllegalArgumentException("these are no rounds of one motif: " + rounds);
        }
    }

    private static boolean isMotif(List<String> rounds) {
        return !rounds.isEmpty()
                && !rounds.get(0).isEmpty()
                && rounds.stream()
                        .allMatch(round -> round.length() == rounds.get(0).length()
                                && round.chars().allMatch(Motif::isKnown));
    }

    private static boolean isKnown(int letter) {
        return letter == NOTHING || Stitch.ofLetter((char) letter).isPresent();
    }

    /**
     * The stitches between two opposite corners of a rectangle, both included.
     *
     * @param side the side that the two stand on
     * @param repeats how often the repeat is worked on that side
     * @param one in a charted round, as the other one
     */
    public static Motif of(Chart chart, Side side, int repeats, SidePlace one, SidePlace other) {
        int firstColumn = Math.min(one.fabricColumn(), other.fabricColumn());
        int lastColumn = Math.max(one.fabricColumn(), other.fabricColumn());
        List<String> rounds = new ArrayList<>();
        for (int r = Math.min(one.round(), other.round()); r <= Math.max(one.round(), other.round()); r++) {
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
     * Reads what {@link #text} has written.
     *
     * @return empty if it is anything else: there must be lines of equal length, of the letters of stitches and {@link
     *     #NOTHING}; blanks around a line and empty lines are passed over
     */
    public static Optional<Motif> parse(String text) {
        List<String> rounds = new ArrayList<>(
                text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList());
        Collections.reverse(rounds);
        return isMotif(rounds) ? Optional.of(new Motif(rounds)) : Optional.empty();
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

    /**
     * What comes of a motif in a chart, and what does not.
     *
     * @param stitches where its stitches come to lie
     * @param roundsBeyond how many of its rounds lie beyond the outermost round of the chart
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
     * @param side the side on which it is placed
     * @param repeats how often the repeat is worked on that side
     * @param first where the innermost round begins
     */
    public Placed placed(Chart chart, Side side, int repeats, SidePlace first) {
        Map<Place, Stitch> stitches = new HashMap<>();
        int fitting = Math.min(rounds.size(), Math.max(0, chart.rounds().size() - first.round() + 1));
        int beyond = 0;
        int over = 0;
        for (int i = 0; i < fitting; i++) {
            for (int j = 0; j < columns(); j++) {
                Optional<Stitch> stitch = Stitch.ofLetter(rounds.get(i).charAt(j));
                if (stitch.isEmpty()) {
                    continue;
                }
                Optional<Place> place =
                        placeAt(chart, chart.shape(side), repeats, first.round() + i, first.fabricColumn() + j);
                if (place.isEmpty()) {
                    beyond++;
                } else {
                    Stitch before = stitches.put(place.get(), stitch.get());
                    over += before == null || before == stitch.get() ? 0 : 1;
                }
            }
        }
        return new Placed(stitches, rounds.size() - fitting, beyond, over);
    }

    private static Optional<Place> placeAt(Chart chart, SideShape shape, int repeats, int round, int fabricColumn) {
        int stitch = fabricColumn + round;
        return round >= 1 && round <= chart.rounds().size() && stitch >= 1 && stitch <= shape.stitches(round, repeats)
                ? Optional.of(shape.placeOf(new SidePlace(round, stitch), repeats))
                        .filter(chart::has)
                : Optional.empty();
    }
}
