package edgewright.assist.picture;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.assist.picture.PictureAnswer.Stitched;
import edgewright.chart.Chart;
import edgewright.chart.Corner;
import edgewright.chart.Heading;
import edgewright.chart.Place;
import edgewright.chart.Rules;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import edgewright.chart.Stitches;
import edgewright.check.Checker;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What comes of a picture can be worked, and shows what the answer says. */
class WorkablePicturesTest {
    private static final int PICTURES = 2_000;

    @Test
    void noChartOfAPictureHasAnErrorAndEachMissesWhatItSays() {
        for (int seed = 0; seed < PICTURES; seed++) {
            Rules rules = rules(seed);
            PictureTask task = new RandomPictures(seed).task(1, 24, 1, 20, rules);
            Stitched answer = (Stitched) PictureStitcher.nearest(task);
            Chart chart = chart(answer, rules, seed % 3, seed % 4);
            assertThat(Checker.check(chart).errors()).as("seed %d", seed).isEmpty();
            assertThat(misses(chart, task.picture())).as("seed %d", seed).isEqualTo(answer.misses());
            assertThat(answer.least()).isTrue();
        }
    }

    @Test
    void whereNoRunMayBeLooseNoneIsAndThereIsStillNoError() {
        for (int seed = 0; seed < 500; seed++) {
            Rules rules = rules(seed).withLooseRun(1 + seed % 5);
            PictureTask task = new RandomPictures(seed).task(1, 12, 1, 12, rules);
            Stitched answer = (Stitched) PictureStitcher.withoutLooseRuns(task, () -> false);
            Chart chart = chart(answer, rules, 0, 0);
            assertThat(Checker.check(chart).findings().stream()
                            .filter(finding -> finding.rule().equals("loose-run"))
                            .toList())
                    .as("seed %d", seed)
                    .isEmpty();
            assertThat(Checker.check(chart).errors()).isEmpty();
            assertThat(misses(chart, task.picture())).isEqualTo(answer.misses());
        }
    }

    @Test
    void aPictureThatIsItsOwnMirrorComesOutAsItsOwnMirror() {
        for (int seed = 0; seed < 300; seed++) {
            PictureTask half =
                    new RandomPictures(seed).task(2, 16, 2, 8, rules(seed).withLooseRun(2));
            int w = half.picture().width();
            WantedPicture whole = WantedPicture.of(
                    half.picture().rounds(),
                    2 * w,
                    place -> half.picture()
                            .at(new Place(
                                    place.round(),
                                    Section.REPEAT,
                                    Math.min(place.place(), 2 * w + 1 - place.place()))));
            for (Stitches round : rounds(new PictureTask(whole, half.yarns(), half.rules()))) {
                assertThat(round.reversed()).isEqualTo(round);
            }
        }
    }

    @Test
    void columnsOfWhichTheSameIsAskedAreWorkedAlikeWhateverRunsTheyMake() {
        for (int seed = 0; seed < 300; seed++) {
            PictureTask half =
                    new RandomPictures(seed).task(2, 16, 2, 8, rules(seed).withLooseRun(2));
            int w = half.picture().width();
            WantedPicture twice = WantedPicture.of(
                    half.picture().rounds(),
                    2 * w,
                    place -> half.picture().at(new Place(place.round(), Section.REPEAT, (place.place() - 1) % w + 1)));
            for (Stitches round : rounds(new PictureTask(twice, half.yarns(), half.rules()))) {
                assertThat(round.shortestPeriod()).isLessThanOrEqualTo(w);
            }
        }
    }

    @Test
    void aLooseRunIsBrokenWhereThatCostsNothing() {
        // Any yarn will do in rounds 1 and 2; what shows B in round 3 hangs from round 4, or from none.
        WantedPicture picture =
                WantedPicture.of(5, 4, place -> place.round() == 1 ? Wanted.of("B") : Wanted.NEVER_MIND);
        Rules rules = Rules.DEFAULT.withLooseRun(1);
        PictureTask task = new PictureTask(picture, List.of("A", "B", "A", "B", "A"), rules);
        Stitched kept = (Stitched) PictureStitcher.nearest(task);
        Stitched broken = (Stitched) PictureStitcher.withoutLooseRuns(task, () -> false);
        assertThat(kept.rounds().toString()).isEqualTo("[bbbb, llll, bbbb, bbbb, bbbb]");
        assertThat(broken.rounds().get(1).count(Stitch.LONG)).isEqualTo(2);
        assertThat(broken.cost()).isEqualTo(new Cost(0, 2, 2));
    }

    @Test
    void breakingRunsNeverMakesMoreOfThemAndNeverCosts() {
        Set<String> fewer = new TreeSet<>();
        for (int seed = 0; seed < 600; seed++) {
            PictureTask loose =
                    new RandomPictures(seed).task(4, 14, 6, 14, rules(seed).withLooseRun(2_000));
            PictureTask tight = new PictureTask(
                    loose.picture(), loose.yarns(), loose.rules().withLooseRun(2));
            Stitched before = (Stitched) PictureStitcher.nearest(loose);
            Stitched after = (Stitched) PictureStitcher.nearest(tight);
            assertThat(after.cost()).isEqualTo(before.cost());
            int less = looseRuns(before, tight.rules()) - looseRuns(after, tight.rules());
            assertThat(less).as("seed %d", seed).isGreaterThanOrEqualTo(0);
            if (less > 0) {
                fewer.add("seed " + seed);
            }
        }
        assertThat(fewer).hasSizeGreaterThan(10);
    }

    private static int looseRuns(Stitched answer, Rules rules) {
        LongRuns runs = new LongRuns(rules.looseRun());
        int loose = 0;
        for (Stitches round : answer.rounds()) {
            loose += runs.pieces(column -> round.at(column + 1) == Stitch.LONG, round.length())
                    .size();
        }
        return loose;
    }

    private static List<Stitches> rounds(PictureTask task) {
        return ((Stitched) PictureStitcher.nearest(task)).rounds();
    }

    private static Rules rules(int seed) {
        return Rules.DEFAULT.withStackLongStitches(new Random(seed).nextBoolean());
    }

    private static Chart chart(Stitched answer, Rules rules, int a, int b) {
        return answer.chart(Heading.of("Blots"), Corner.DEFAULT, rules, PictureYarns.of(List.of("A", "B", "C")), a, b);
    }

    /** What the chart itself shows, told by the geometry of charts. */
    private static List<Miss> misses(Chart chart, WantedPicture picture) {
        List<Miss> misses = new ArrayList<>();
        for (int r = 1; r <= chart.rounds().size(); r++) {
            for (int p = 1; p <= chart.shape().w(); p++) {
                Place place = new Place(r, Section.REPEAT, p);
                String shows = chart.round(chart.shownRound(place)).yarn();
                Wanted wanted = picture.at(place);
                if (!wanted.isNeverMind() && !wanted.yarn().equals(shows)) {
                    misses.add(new Miss(place, wanted.yarn(), shows));
                }
            }
        }
        return misses;
    }
}
