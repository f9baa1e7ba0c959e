package edgewright.assist.vary;

import edgewright.assist.picture.PictureAnswer.Stitched;
import edgewright.assist.picture.PictureStitcher;
import edgewright.assist.picture.PictureTask;
import edgewright.assist.picture.Wanted;
import edgewright.assist.picture.WantedPicture;
import edgewright.assist.symmetry.Tile;
import edgewright.chart.Chart;
import edgewright.chart.Place;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.check.Checker;
import edgewright.check.Verdict;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.BooleanSupplier;

/**
 * Other charts on the repeat and the corners of one: A, B, w, the corner sections and the number of rounds stay, and so do the rounds
 * that have no long stitch in the repeat, or any stitch that is neither back-loop nor long. In the others another figure is worked,
 * which {@link PictureStitcher} makes of a picture found by chance; the first that is tried is the complement of the chart's own.
 * In every third chart the yarns of the chart change places.
 *
 * <p>Each of them keeps these conditions: no errors, and no more warnings than the chart has, loose runs among them; in the repeat
 * the long stitches are a quarter more or fewer than in the chart at most, or three; a repeat that is the same in a mirror stays so;
 * no more squares stand alone, which in a chart of lines means that every line has two at least; and of the stitches that may
 * change more than one in twelve is another than in the chart and in every other of them, wherever the repeat begins (in a
 * repeat of more than 100 stitches, where it does). The same seed gives the same charts.
 */
public final class Variations {
    /** So many figures are tried for each chart that is wanted, and some to begin with. */
    private static final int TRIES_EACH = 40;

    private static final int TRIES = 400;

    /** In cells: a large chart gets fewer tries, so that an answer takes a few seconds at most. */
    private static final long MOST_TRIED = 4_000_000;

    private static final int FEWEST_TRIES = 4;
    private static final int DIFFERENT = 12;
    private static final int WIDEST_SHIFTED = 100;

    private final Chart chart;
    private final Tile tile;
    private final Random random;
    private final boolean mirrored;
    private final int crumbs;
    private final int warnings;
    private final int longs;
    private final boolean[] free;
    private final String figureYarn;

    private Variations(Chart chart, long seed) {
        this.chart = chart;
        this.tile = new Tile(chart);
        this.random = new Random(seed);
        this.mirrored = tile.isMirrored();
        this.crumbs = tile.crumbs();
        this.warnings = warnings(Checker.check(chart));
        this.longs = longs(chart.rounds());
        this.free = new boolean[tile.rounds() + 1];
        for (int r = 2; r <= tile.rounds(); r++) {
            Stitches repeat = chart.round(r).repeat();
            boolean known = repeat.count(Stitch.BACK_LOOP) + repeat.count(Stitch.LONG) == repeat.length();
            free[r] = known && (longs == 0 || repeat.has(Stitch.LONG));
        }
        this.figureYarn = figureYarn();
    }

    /**
     * Variations of a chart.
     *
     * @param chart without errors
     * @param most how many are wanted; there are fewer if chance does not find so many
     * @param cancelled asked again and again; once it answers true those found so far are the answer
     */
    public static List<Chart> of(Chart chart, int most, long seed, BooleanSupplier cancelled) {
        if (Checker.check(chart).hasErrors()) {
            throw new IllegalArgumentException("a border with errors is not varied");
        }
        return new Variations(chart, seed).found(most, cancelled);
    }

    private List<Chart> found(int most, BooleanSupplier cancelled) {
        List<Chart> found = new ArrayList<>();
        List<List<Round>> known = new ArrayList<>(List.of(chart.rounds()));
        Figure figure = new Figure(random, tile.rounds(), tile.width(), mirrored);
        int tries = tries(most);
        for (int i = 0; i < tries && found.size() < most && !cancelled.getAsBoolean(); i++) {
            Stitched answer = stitched(i == 0 ? complement() : figure.next());
            if (answer == null) {
                continue;
            }
            Chart made = made(answer.rounds());
            if (keeps(made) && known.stream().allMatch(other -> isDifferent(made.rounds(), other))) {
                known.add(made.rounds());
                found.add(found.size() % 3 == 2 ? coloured(made) : made);
            }
        }
        return List.copyOf(found);
    }

    private int tries(int most) {
        long inTime = MOST_TRIED / ((long) tile.rounds() * tile.width());
        return (int) Math.max(FEWEST_TRIES, Math.min(TRIES + (long) TRIES_EACH * most, inTime));
    }

    private boolean[][] complement() {
        boolean[][] field = new boolean[tile.rounds()][tile.width()];
        for (int r = 1; r <= tile.rounds(); r++) {
            for (int i = 0; i < tile.width(); i++) {
                field[r - 1][i] = !tile.id(tile.shown(r, i)).equals(figureYarn);
            }
        }
        return field;
    }

    /** The yarn that most long stitches of the chart bring; in a plain chart that of round 2. */
    private String figureYarn() {
        Map<String, Integer> counts = new HashMap<>();
        String best = chart.round(Math.min(2, tile.rounds())).yarn();
        for (Round round : chart.rounds()) {
            counts.merge(round.yarn(), round.repeat().count(Stitch.LONG), Integer::sum);
            best = counts.get(round.yarn()) > counts.getOrDefault(best, 0) ? round.yarn() : best;
        }
        return best;
    }

    /** Null if the stitches that stay cannot be worked with it. */
    private Stitched stitched(boolean[][] field) {
        Map<Place, Stitch> locked = new HashMap<>();
        List<String> yarns = chart.rounds().stream().map(Round::yarn).toList();
        for (int r = 1; r <= tile.rounds(); r++) {
            for (int i = 1; i <= tile.width() && !free[r]; i++) {
                locked.put(
                        new Place(r, Section.REPEAT, i), chart.round(r).repeat().at(i));
            }
        }
        WantedPicture picture = WantedPicture.of(tile.rounds(), tile.width(), place -> wanted(place, yarns, field));
        PictureTask task = new PictureTask(picture, yarns, chart.rules(), locked);
        return PictureStitcher.nearest(task) instanceof Stitched answer ? answer : null;
    }

    private Wanted wanted(Place place, List<String> yarns, boolean[][] field) {
        int r = place.round();
        if (r == tile.rounds() || !free[r + 1]) {
            return Wanted.NEVER_MIND;
        }
        if (field[r - 1][place.place() - 1]) {
            return Wanted.of(figureYarn);
        }
        String own = yarns.get(r - 1);
        String ground = own.equals(figureYarn) ? yarns.get(r) : own;
        return ground.equals(figureYarn) ? Wanted.NEVER_MIND : Wanted.of(ground);
    }

    private Chart made(List<Stitches> repeats) {
        List<Round> rounds = new ArrayList<>();
        for (int r = 1; r <= tile.rounds(); r++) {
            rounds.add(chart.round(r).with(Section.REPEAT, repeats.get(r - 1)));
        }
        return chart.withRounds(rounds);
    }

    private boolean keeps(Chart made) {
        int more = Math.abs(longs(made.rounds()) - longs);
        int most = longs == 0 ? tile.width() * tile.rounds() / 4 : Math.max(3, longs / 4);
        if (more > most) {
            return false;
        }
        Tile other = new Tile(made);
        if (other.crumbs() > crumbs || (mirrored && !other.isMirrored())) {
            return false;
        }
        Verdict verdict = Checker.check(made);
        return !verdict.hasErrors() && warnings(verdict) <= warnings;
    }

    private static int warnings(Verdict verdict) {
        return verdict.findings().size() + verdict.untold() - verdict.errors().size();
    }

    private static int longs(List<Round> rounds) {
        return rounds.stream()
                .mapToInt(round -> round.repeat().count(Stitch.LONG))
                .sum();
    }

    /** Whether more than one stitch in twelve of the rounds that may change is another, however the repeat is moved along the side. */
    private boolean isDifferent(List<Round> one, List<Round> two) {
        int compared = 0;
        for (int r = 1; r <= tile.rounds(); r++) {
            compared += free[r] ? tile.width() : 0;
        }
        int least = compared;
        int shifts = tile.width() > WIDEST_SHIFTED ? 1 : tile.width();
        for (int k = 0; k < shifts; k++) {
            int different = 0;
            for (int r = 1; r <= tile.rounds(); r++) {
                if (free[r]) {
                    different +=
                            different(one.get(r - 1).repeat(), two.get(r - 1).repeat(), k);
                }
            }
            least = Math.min(least, different);
        }
        return least * DIFFERENT > compared;
    }

    private int different(Stitches one, Stitches two, int k) {
        int different = 0;
        for (int i = 0; i < tile.width(); i++) {
            different += one.at(i + 1) == two.at((i + k) % tile.width() + 1) ? 0 : 1;
        }
        return different;
    }

    /** The chart with its yarns in other places, if that is no worse. */
    private Chart coloured(Chart made) {
        Set<String> used = new HashSet<>();
        List<String> ids = new ArrayList<>();
        made.rounds().stream().map(Round::yarn).filter(used::add).forEach(ids::add);
        List<String> others = new ArrayList<>(ids);
        Collections.rotate(others, 1);
        List<Round> rounds = made.rounds().stream()
                .map(round -> round.withYarn(others.get(ids.indexOf(round.yarn()))))
                .toList();
        Chart coloured = made.withRounds(rounds);
        return warnings(Checker.check(coloured)) <= warnings ? coloured : made;
    }
}
