package edgewright.words.write;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.Stitches;
import edgewright.words.SeededCharts;
import edgewright.words.tree.Bracket;
import edgewright.words.tree.Group;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideStep;
import edgewright.words.tree.SideWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A round is said in the fewest things that a reader must take in, with the shortest period of its repeat. */
class GroupedSideTest {
    private final LeastWords least = new LeastWords();
    private int compared;

    @ParameterizedTest(name = "{0} {1} {2} is said as {3}")
    @CsvSource({
        // One stitch throughout.
        "bb, bbbb, bbb, *b* 0",
        "p, p, p, *p* 0",
        // The same in the middle only.
        "bbl, bbbb, bbb, bb l *b* 0",
        "lbb, bbbb, bbl, l *b* 1 l",
        // The example round of the format: the group stays in its place.
        "bbbb, lblblbbb, lblbb, bbbb *(l b)2 l bbb* 5 l b l bb",
        // A shorter period.
        "b, lbblbb, b, b l *bb l* 3 bbb",
        "b, lblb, l, *b l* 0",
        // Corner sections that continue the period.
        "bb, lbbb, lb, bb *l bbb* 2 l b",
        "bbllbbb, llbbb, ll, bb ll *bbb ll* 0",
        "b, lbbb, lbbbl, b l *bbb l* 0",
        "bbbb, lbb, lbb, bbbb *l bb* 0",
        // No run is cut: the group begins within the first repeat.
        "bbb, bllb, bb, bbbb *ll bb* 5 ll bbb",
        "'', lb, bb, l *b l* 3 bbb",
        // Brackets in brackets, and before and after the group.
        "pbpbp, lblbplblbpc, plblblb, (p b)2 p *[(l b)2 p]2 c* 7 p (l b)3",
    })
    void aRoundIsSaidAsSimplyAsItCanBe(String from, String repeat, String to, String said) {
        assertThat(said(GroupedSide.of(Stitches.of(from), Stitches.of(repeat), Stitches.of(to), false)))
                .isEqualTo(said);
    }

    @ParameterizedTest(name = "{0} {1} {2} is said as {3}")
    @CsvSource({
        "bbb, lbbl, bbb, bbb *l bb l* 3 bbb",
        "'', lb, bb, *l b* 2 bb",
        "b, lbb, b, b *l bb* 1 b",
    })
    void whereASideHasNoRepeatTheWordsHoldOnItToo(String from, String repeat, String to, String said) {
        assertThat(said(GroupedSide.of(Stitches.of(from), Stitches.of(repeat), Stitches.of(to), true)))
                .isEqualTo(said);
    }

    @Test
    void aRepeatWithoutStitchesIsNotSaid() {
        assertThat(said(GroupedSide.of(Stitches.of("bb"), Stitches.of(""), Stitches.of("bl"), false)))
                .isEqualTo("bbb l");
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 5})
    void theWordsOfEveryRoundComeOutEvenForSoManyRepeats(int repeats) {
        for (long seed = 0; seed < 3_000; seed++) {
            Chart chart = new SeededCharts(seed).any();
            for (Round round : chart.rounds()) {
                SideInstructions said =
                        GroupedSide.of(round.fromCorner(), round.repeat(), round.toCorner(), repeats == 0);
                assertThat(worked(said, round.side(Side.FIRST, repeats).letters()))
                        .as("seed %d, %s", seed, round)
                        .isEqualTo(round.side(Side.FIRST, repeats).letters());
                assertThat(said.group().orElseThrow().stitches())
                        .isEqualTo(round.repeat().shortestPeriod());
            }
        }
    }

    @Test
    void noWordsAreShorterForAnySideOfTwoStitches() {
        compareAll(List.of("b", "l"), 3, 6);
        assertThat(compared).isEqualTo(15 * 126 * 15);
    }

    @Test
    void noWordsAreShorterForAnySideOfThreeStitches() {
        compareAll(List.of("b", "l", "c"), 2, 5);
        assertThat(compared).isEqualTo(13 * 363 * 13);
    }

    @Test
    void noWordsAreShorterForLongerSides() {
        Random random = new Random(11);
        for (int i = 0; i < 3_000; i++) {
            String from = stitches(random, 12);
            String repeat = stitches(random, 24);
            String to = stitches(random, 12);
            compare(from, repeat.isEmpty() ? "b" : repeat, to);
        }
        assertThat(compared).isEqualTo(3_000);
    }

    /** Much of it the same over and over, so that there is something to put into brackets. */
    private static String stitches(Random random, int most) {
        StringBuilder stitches = new StringBuilder();
        while (stitches.length() < most && random.nextInt(5) > 0) {
            int length = stitches.length();
            boolean again = length > 1 && random.nextBoolean();
            stitches.append(
                    again
                            ? stitches.substring(random.nextInt(length))
                            : String.valueOf("blp".charAt(random.nextInt(3))).repeat(1 + random.nextInt(2)));
        }
        return stitches.length() > most ? stitches.substring(0, most) : stitches.toString();
    }

    private void compareAll(List<String> letters, int section, int repeat) {
        List<String> sections = words(letters, section);
        for (String middle : words(letters, repeat)) {
            if (!middle.isEmpty()) {
                sections.forEach(from -> sections.forEach(to -> compare(from, middle, to)));
            }
        }
    }

    private static List<String> words(List<String> letters, int longest) {
        List<String> words = new ArrayList<>(List.of(""));
        List<String> last = words;
        for (int length = 1; length <= longest; length++) {
            last = last.stream()
                    .flatMap(word -> letters.stream().map(letter -> word + letter))
                    .toList();
            words.addAll(last);
        }
        return words;
    }

    private void compare(String from, String repeat, String to) {
        SideInstructions said = GroupedSide.of(Stitches.of(from), Stitches.of(repeat), Stitches.of(to), false);
        int leastFromNone = least.of(from, repeat, to, 0);
        int leastFromOne = least.of(from, repeat, to, 1);
        int fewest = GroupedSide.fewestRepeats(Round.of("A", from, repeat, to), said);
        assertThat(cost(said)).as("%s %s %s: %s", from, repeat, to, said(said)).isEqualTo(leastFromOne);
        assertThat(fewest).as("%s %s %s", from, repeat, to).isEqualTo(leastFromNone == leastFromOne ? 0 : 1);
        for (int m = fewest; m < fewest + 3; m++) {
            String side = from + repeat.repeat(m) + to;
            assertThat(worked(said, side)).isEqualTo(side);
        }
        compared++;
    }

    /** As a maker does it: the group as often as it fits before the last stitches. */
    private static String worked(SideInstructions said, String side) {
        Group group = said.group().orElseThrow();
        int room = side.length() - SideStep.stitches(said.before()) - group.lastStitches();
        assertThat(group.lastStitches()).isEqualTo(SideStep.stitches(said.after()));
        assertThat(room % group.stitches()).isZero();
        return SideWords.letters(said.before())
                + SideWords.letters(group.steps()).repeat(room / group.stitches())
                + SideWords.letters(said.after());
    }

    private static int cost(SideInstructions said) {
        Group group = said.group().orElseThrow();
        int asterisk = RoundWording.isEveryStitch(group) ? 1 : 2 + cost(group.steps());
        return cost(said.before()) + asterisk + (group.lastStitches() == 0 ? 0 : 1) + cost(said.after());
    }

    private static int cost(List<? extends SideStep> steps) {
        return steps.stream()
                .mapToInt(step -> step instanceof Run ? 2 : 3 + cost(((Bracket) step).steps()))
                .sum();
    }

    private static String said(SideInstructions said) {
        String group = said.group()
                .map(g -> "*" + SideWords.spaced(g.steps()) + "* " + g.lastStitches())
                .orElse("");
        return (SideWords.spaced(said.before()) + " " + group + " " + SideWords.spaced(said.after())).strip();
    }
}
