package edgewright.check;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.PerSide;
import edgewright.chart.Place;
import edgewright.chart.Section;
import edgewright.chart.Side;
import edgewright.testing.RandomCharts;
import edgewright.testing.Sketches;
import edgewright.texts.English;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FindingSentencesTest {
    private static final FindingSentences SENTENCES = new FindingSentences(English.LANGUAGE);

    @Test
    void a_finding_says_what_is_wrong_and_why_hands_cannot_do_it() {
        assertThat(sentences("""
                        sides 8,3
                        3 A bbl|lbbb|bbb
                        2 B  bl|lbbb|bb
                        1 A   b|bbbb|b
                        """))
                .containsExactly(
                        "The left-hand edge: A side of 3 stitches in the base round does not come out even, since it is not a"
                                + " multiple of 4: the maker comes to the corner before the repeat is whole, 3 too many"
                                + " or 1 too few.",
                        "The right-hand edge: A side of 3 stitches in the base round does not come out even, since it is not a"
                                + " multiple of 4: the maker comes to the corner before the repeat is whole, 3 too many"
                                + " or 1 too few.",
                        "Round 3, from the corner, stitch 3: The stitch directly below, in round 2, is long too: it lies in front"
                                + " of the loop that this one needs, so the hook cannot get at it.",
                        "Round 3, repeat, stitch 1: The stitch directly below, in round 2, is long too: it lies in front"
                                + " of the loop that this one needs, so the hook cannot get at it.");
    }

    @Test
    void the_base_round_is_called_by_its_name() {
        assertThat(sentences("""
                        landOnCornerChain false
                        2 B bl|lb|bb
                        1 A  p|pb|b
                        """))
                .containsExactly(
                        "Round 2, from the corner, stitch 2: The stitch directly below, in round 1, is plain: it is worked through both loops of"
                                + " the stitch it stands on in the base round, so no front loop is left to drop into.",
                        "Round 2, from the corner, stitch 2: The stitch next to the first one of a side lands in a corner"
                                + " chain of the base round, and this chart keeps its corner chains free: a long stitch"
                                + " there pulls the corner together.",
                        "Round 2, repeat, stitch 1: The stitch directly below, in round 1, is plain: it is worked through both loops of"
                                + " the stitch it stands on in the base round, so no front loop is left to drop into.");
    }

    @Test
    void a_run_without_an_end_says_so() {
        assertThat(sentences("""
                        looseRun 3
                        2 B bb|lb|lllllb
                        1 A  b|bb|bbbbb
                        """))
                .containsExactly(
                        "Round 2, to the corner, stitch 1: 5 long stitches stand side by side, where this chart allows 3"
                                + ": nothing holds the stitches behind them, and they hang loose at the back.");
        assertThat(sentences("""
                        2 B bb|l|bb
                        1 A  b|b|b
                        """))
                .containsExactly(
                        "Round 2, repeat, stitch 1: Long stitches stand side by side for as long as the repeat is worked, where"
                                + " this chart allows 9: nothing holds the stitches behind them, and they hang"
                                + " loose at the back.");
    }

    @Test
    void remedies_say_what_they_do() {
        Verdict verdict = Checker.check(Sketches.chart("""
                4 B bbbb|lb|bbbb
                3 A  bbb|bb|bbb
                2 B   bb|lb|bb
                1 A    b|bb|b
                """));
        assertThat(verdict.findings().get(0).remedies())
                .extracting(SENTENCES::of)
                .containsExactly(
                        "Take the long stitch out and work a back-loop stitch (1 square changes colour)",
                        "Make the stitch two below, in round 2, a back-loop stitch (1 square changes colour)",
                        "Allow long stitches on long stitches in this chart (no square changes colour)");
    }

    @Test
    void places_are_said_as_far_as_they_are_given() {
        assertThat(Stream.of(
                                new FindingPlace.OfSide(Side.RIGHT),
                                new FindingPlace.OfRound(7),
                                new FindingPlace.OfSection(7, Section.TO_CORNER),
                                new FindingPlace.OfStitch(new Place(7, Section.REPEAT, 3)))
                        .map(SENTENCES::of))
                .containsExactly(
                        "The right-hand edge", "Round 7", "Round 7, to the corner", "Round 7, repeat, stitch 3");
    }

    /** A few thousand charts ask for every remedy that there is. */
    @Test
    void everyRemedyThatIsOfferedHasItsWords() {
        RandomCharts charts = new RandomCharts(21);
        for (int i = 0; i < 400; i++) {
            Verdict verdict =
                    Checker.check(charts.small(), PerSide.all(charts.random().nextInt(20)));
            assertRemediesSaid(verdict);
            assertRemediesSaid(Checker.check(charts.ragged()));
        }
    }

    @Test
    void everyRuleHasATitleAndASentenceWithAFullStop() {
        for (RuleEntry rule : RuleBook.all()) {
            Finding finding = new RuleBook(English.LANGUAGE)
                    .page(rule.id())
                    .fails()
                    .verdict()
                    .findings()
                    .get(0);
            assertThat(SENTENCES.of(finding)).as(rule.id()).endsWith(".").contains(" ");
            assertThat(SENTENCES.title(rule.id())).isNotBlank().doesNotEndWith(".");
        }
    }

    /** A round and a stitch are names; how many stitches there are is an amount. */
    @Test
    void theNumberOfARoundOrAStitchIsNeverGrouped() {
        Place far = new Place(1201, Section.REPEAT, 12_010);
        assertThat(SENTENCES.of(new FindingPlace.OfStitch(far))).isEqualTo("Round 1201, repeat, stitch 12010");
    }

    private static List<String> sentences(String sketch) {
        return Sketch.read(sketch).verdict().findings().stream()
                .map(finding -> SENTENCES.of(finding.place()) + ": " + SENTENCES.of(finding))
                .toList();
    }

    private static void assertRemediesSaid(Verdict verdict) {
        assertThat(verdict.findings())
                .flatExtracting(Finding::remedies)
                .allSatisfy(
                        remedy -> assertThat(SENTENCES.of(remedy)).isNotBlank().doesNotContain("."));
    }
}
