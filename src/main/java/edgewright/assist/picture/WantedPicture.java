package edgewright.assist.picture;

import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Section;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The colours that are wanted in one repeat: what is to show in each cell, round by round. Immutable.
 *
 * <p>Rounds count from 1, the innermost; places from 1 in working order. Places of a picture are those of the repeat section of
 * the chart that comes of it, so a fabric column is one place in every round.
 */
public final class WantedPicture {
    private final int rounds;
    private final int width;
    /** Row by row, round 1 first. */
    private final Wanted[] cells;

    private WantedPicture(int rounds, int width, Wanted[] cells) {
        this.rounds = rounds;
        this.width = width;
        this.cells = cells;
    }

    /**
     * A picture by its places.
     *
     * @throws IllegalArgumentException if it has no cell, or is larger than the repeat of a chart may be
     */
    public static WantedPicture of(int rounds, int width, Function<Place, Wanted> wanted) {
        require(rounds, Chart.MOST_ROUNDS, "rounds");
        require(width, Chart.MOST_STITCHES, "stitches");
        Wanted[] cells = new Wanted[rounds * width];
        for (int i = 0; i < cells.length; i++) {
            cells[i] = wanted.apply(new Place(i / width + 1, Section.REPEAT, i % width + 1));
        }
        return new WantedPicture(rounds, width, cells);
    }

    /** A picture in which any colours will do: to begin with. */
    public static WantedPicture neverMind(int rounds, int width) {
        return of(rounds, width, place -> Wanted.NEVER_MIND);
    }

    /** How many rounds it has. */
    public int rounds() {
        return rounds;
    }

    /** How many stitches a round of it has. */
    public int width() {
        return width;
    }

    /** What is wanted at a place of the repeat. */
    public Wanted at(Place place) {
        return cells[index(place)];
    }

    /** This picture with another wish at one place. */
    public WantedPicture with(Place place, Wanted wanted) {
        Wanted[] changed = cells.clone();
        changed[index(place)] = wanted;
        return new WantedPicture(rounds, width, changed);
    }

    /** The yarns that are wanted anywhere, in the order of their ids. */
    public Set<String> yarns() {
        Set<String> yarns = new TreeSet<>();
        for (Wanted wanted : cells) {
            if (!wanted.isNeverMind()) {
                yarns.add(wanted.yarn());
            }
        }
        return yarns;
    }

    /** This picture as in a mirror: what is worked first in each round is worked last. */
    public WantedPicture reversed() {
        return of(rounds, width, place -> at(new Place(place.round(), Section.REPEAT, width + 1 - place.place())));
    }

    /** What is wanted of a fabric column, from the innermost round outwards. */
    List<Wanted> column(int place) {
        Wanted[] column = new Wanted[rounds];
        for (int i = 0; i < rounds; i++) {
            column[i] = cells[i * width + place - 1];
        }
        return Arrays.asList(column);
    }

    private int index(Place place) {
        if (place.round() < 1 || place.round() > rounds || place.section() != Section.REPEAT || place.place() > width) {
            throw new IllegalArgumentException(place + " is outside a picture of " + rounds + " rounds of " + width);
        }
        return (place.round() - 1) * width + place.place() - 1;
    }

    private static void require(int number, int most, String what) {
        if (number < 1 || number > most) {
            throw new IllegalArgumentException(what + " of a picture: " + number + ", expected 1 to " + most);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WantedPicture that && width == that.width && Arrays.equals(cells, that.cells);
    }

    @Override
    public int hashCode() {
        return 31 * width + Arrays.hashCode(cells);
    }

    /** A line a round, the outermost first, as {@link PictureText} reads it; weights are not shown. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        for (int r = rounds; r >= 1; r--) {
            for (int i = (r - 1) * width; i < r * width; i++) {
                text.append(cells[i].isNeverMind() ? "." : cells[i].yarn());
            }
            text.append('\n');
        }
        return text.toString();
    }
}
