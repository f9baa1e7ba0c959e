package edgewright.yarn;

import edgewright.chart.Colour;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Finds the colour nearest to a given one that can be told apart from others. Near is by CIEDE2000; told apart is by
 * {@link Contrast}, whose limits are ours.
 */
public final class ColourSuggestion {
    /** The steps in which each channel is first gone through; they go from 0 to 255 with nothing left over. */
    private static final int STEP = 5;

    /** How many of the nearest are looked at again, channel value by channel value. */
    private static final int FINALISTS = 12;

    private record Candidate(Colour colour, double difference) {
        static final Comparator<Candidate> NEAREST_FIRST = Comparator.comparingDouble(Candidate::difference)
                .thenComparingInt(candidate -> candidate.colour().rgb());
    }

    private final Colour wanted;
    private final Lab wantedLab;
    private final List<Colour> others;

    private ColourSuggestion(Colour wanted, Collection<Colour> others) {
        this.wanted = wanted;
        this.wantedLab = Lab.of(wanted);
        this.others = List.copyOf(others);
    }

    /**
     * The nearest colour that can be told apart from all the others; the wanted one itself if it can. Empty if there is none,
     * as between black, white and a middle grey.
     */
    public static Optional<Colour> nearest(Colour wanted, Collection<Colour> others) {
        return new ColourSuggestion(wanted, others).search();
    }

    private Optional<Colour> search() {
        if (passes(wanted)) {
            return Optional.of(wanted);
        }
        PriorityQueue<Candidate> nearest = new PriorityQueue<>(Candidate.NEAREST_FIRST.reversed());
        for (int red = 0; red <= 255; red += STEP) {
            for (int green = 0; green <= 255; green += STEP) {
                for (int blue = 0; blue <= 255; blue += STEP) {
                    consider(new Colour(red << 16 | green << 8 | blue), nearest, FINALISTS);
                }
            }
        }
        PriorityQueue<Candidate> best = new PriorityQueue<>(Candidate.NEAREST_FIRST.reversed());
        for (Candidate finalist : List.copyOf(nearest)) {
            around(finalist.colour()).forEach(colour -> consider(colour, best, 1));
        }
        return Optional.ofNullable(best.peek()).map(Candidate::colour);
    }

    private void consider(Colour colour, PriorityQueue<Candidate> kept, int most) {
        if (!passes(colour)) {
            return;
        }
        kept.add(new Candidate(colour, Ciede2000.between(wantedLab, Lab.of(colour))));
        if (kept.size() > most) {
            kept.poll();
        }
    }

    private static List<Colour> around(Colour middle) {
        List<Colour> colours = new ArrayList<>();
        for (int red = from(middle.red()); red <= to(middle.red()); red++) {
            for (int green = from(middle.green()); green <= to(middle.green()); green++) {
                for (int blue = from(middle.blue()); blue <= to(middle.blue()); blue++) {
                    colours.add(new Colour(red << 16 | green << 8 | blue));
                }
            }
        }
        return colours;
    }

    private static int from(int channel) {
        return Math.max(0, channel - STEP + 1);
    }

    private static int to(int channel) {
        return Math.min(255, channel + STEP - 1);
    }

    /** The same as asking {@link Contrast}, but without the difference of colours where the ratio alone tells. */
    private boolean passes(Colour colour) {
        double one = colour.luminance();
        for (Colour other : others) {
            double two = other.luminance();
            double ratio = (Math.max(one, two) + 0.05) / (Math.min(one, two) + 0.05);
            if (ratio < Contrast.LEAST_RATIO) {
                return false;
            }
            if (ratio < Contrast.CLEAR_RATIO && Contrast.between(colour, other).isLow()) {
                return false;
            }
        }
        return true;
    }
}
