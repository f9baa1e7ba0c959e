package edgewright.fit;

import edgewright.chart.Chart;
import edgewright.chart.Round;
import edgewright.chart.Section;
import edgewright.chart.Stitch;
import java.util.OptionalInt;
import java.util.function.BiPredicate;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * In which rounds the counts are put right: count in one, change in the next, count again in the one after. These are the
 * last plain rounds before the first long stitch.
 *
 * <p>A long stitch of the round right after the changing round would cross it and land in the counting round, where stitches
 * that share a foot have one loop for two. So at least one plain round lies between the changing round and the first long
 * stitch. A round whose repeat is not one stitch throughout must close too, as does one with chains, and is never the
 * changing round or before it. Source of the order: common practice, no source.
 *
 * @param firstLong the first round with a long stitch
 * @param counting the round in which the sides are counted; empty if they must be right as soon as the base round is on
 * @param changing the round in which stitches are added or lost; 0 means while the base round is worked
 * @param checking the plain round after it, in which they are counted again; empty if the changing round itself must do
 */
public record ChangeRounds(OptionalInt firstLong, OptionalInt counting, int changing, OptionalInt checking) {

    /** The best rounds for this chart. A chart without long stitches is put right in its last rounds but one. */
    public static ChangeRounds of(Chart chart) {
        return of(
                chart.rounds().size(),
                (round, such) -> chart.round(round).has(such),
                round -> isPatterned(chart.round(round)));
    }

    /**
     * The best rounds where only so much is known of them, as of those that were read in words.
     *
     * @param rounds how many there are
     * @param has whether there is such a stitch in a round; asked for rounds from 1
     * @param isPatterned whether a round can only be worked on sides on which the repeat comes out even, as one with long
     *     stitches or chains and one whose repeat is not one stitch throughout
     */
    public static ChangeRounds of(int rounds, BiPredicate<Integer, Predicate<Stitch>> has, IntPredicate isPatterned) {
        OptionalInt firstLong = first(rounds, round -> has.test(round, Stitch::coversStitchBelow));
        OptionalInt firstPatterned = first(rounds, isPatterned);
        int innermostLanding = Stitch.covering().stream()
                .flatMapToInt(stitch -> first(rounds, round -> has.test(round, stitch::equals)).stream()
                        .map(first -> first - stitch.roundsDown()))
                .min()
                .orElse(rounds - 1);
        int changing = Math.max(0, Math.min(innermostLanding, firstPatterned.orElse(rounds + 1) - 1));
        boolean isNextPlain = changing < rounds && !isPatterned.test(changing + 1);
        return new ChangeRounds(
                firstLong,
                changing == 0 ? OptionalInt.empty() : OptionalInt.of(changing - 1),
                changing,
                isNextPlain ? OptionalInt.of(changing + 1) : OptionalInt.empty());
    }

    /** Whether a round can only be worked on sides on which the repeat comes out even. */
    static boolean isPatterned(Round round) {
        boolean isOneStitch = Stitch.inStitchBelow().stream()
                .anyMatch(stitch -> Stream.of(Section.values())
                        .filter(Section::isRepeat)
                        .allMatch(section -> round.section(section).isAll(stitch)));
        return !round.standsInRoundBelow() || !isOneStitch;
    }

    private static OptionalInt first(int rounds, IntPredicate said) {
        return IntStream.rangeClosed(1, rounds).filter(said).findFirst();
    }
}
