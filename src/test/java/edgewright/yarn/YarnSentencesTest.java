package edgewright.yarn;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Back;
import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.Colour;
import edgewright.chart.HookSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.PerSide;
import edgewright.chart.SideShape;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import edgewright.yarn.Amounts.OfYarn;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class YarnSentencesTest {
    private static final Yarn PEAT = new Yarn("A", "Peat", Colour.parse("#2b2a33"));
    private static final Yarn CHALK = new Yarn("B", "Chalk", Colour.parse("#f2ead8"));
    private static final Yarn FOG = new Yarn("C", "Fog", Colour.parse("#e4dccb"));
    private static final Amounts SHORT =
            new Amounts(List.of(), List.of(new OfYarn(CHALK.withMetresInHand(OptionalDouble.of(20)), 20)), List.of());
    private static final Chart STRIPES = Chart.blank("Stripes", new SideShape(1, 4, 1), 9, List.of(PEAT, CHALK, FOG));

    private final YarnSentences says = new YarnSentences(English.LANGUAGE);

    @Test
    void what_is_to_be_had_is_rounded_up_and_what_was_worked_is_not() {
        OfYarn yarn = new OfYarn(PEAT.withBall(Optional.of(new Ball(160, 50))), 200);
        assertThat(List.of(says.toHave(yarn.metres()), says.toHave(220.01), says.worked(12.34)))
                .containsExactly("220 m", "221 m", "12.3 m");
        assertThat(says.grams(yarn)).contains("69 g");
        assertThat(says.balls(yarn)).contains("2 balls");
        assertThat(says.balls(new OfYarn(yarn.yarn(), 10))).contains("1 ball");
        assertThat(says.grams(new OfYarn(PEAT, 200))).isEmpty();
    }

    @Test
    void what_was_not_measured_is_said_to_be_estimated() {
        assertThat(says.notes(Amounts.of(STRIPES, PerSide.all(1))))
                .containsExactly(
                        "Each of the two ends of a round is counted as 15 cm (6 in). Totals include 10 % more,"
                                + " for differences of hand, joins and mistakes. The base round is not counted.",
                        "These lengths are estimates: back-loop stitches and chains.",
                        "Measure twenty of each kind, or buy an extra ball.");
    }

    @Test
    void a_round_says_its_layer_unless_it_is_a_charted_one() {
        Chart border = Chart.blank("Stripes", new SideShape(1, 4, 1), 4, List.of(PEAT, CHALK))
                .withMaking(PatternDetails.NONE.withBack(Optional.of(Back.DEFAULT)));
        assertThat(Amounts.of(border, PerSide.all(2)).rounds().stream().map(amount -> says.round(amount.round())))
                .startsWith("1", "2", "3", "4", "back base", "back 1")
                .endsWith("joining");
        assertThat(says.swapLaw())
                .startsWith("Rounds that are joined by long stitches")
                .endsWith(".");
    }

    @Test
    void two_yarns_are_told_apart_or_not_with_the_numbers() {
        assertThat(List.of(says.contrast(new YarnPair(PEAT, CHALK, 2)), says.contrast(new YarnPair(CHALK, FOG, 2))))
                .containsExactly(
                        "Peat and Chalk can be told apart: ratio 11.8, difference 73.",
                        "Chalk and Fog are hard to tell apart: ratio 1.1, difference 3.");
        assertThat(says.suggestion(FOG, Optional.of(Colour.parse("#949494"))))
                .isEqualTo("The nearest colour for Fog that can be told apart from all that it meets is #949494.");
        assertThat(says.suggestion(FOG, Optional.empty()))
                .isEqualTo("No colour for Fog can be told apart from all that it meets.");
        assertThat(says.contrastLimits())
                .startsWith(
                        "Two yarns can be told apart if the ratio of their luminances (WCAG) is 3 or more, or 1.5 or more with a"
                                + " colour difference (CIEDE2000) of 30 or more. These limits are ours;");
    }

    @Test
    void each_answer_says_what_is_missing_and_what_helps() {
        String missing = "Chalk: 2.0 m short.";
        String margin = "Lengths include the margin. A yarn with no length in hand counts as one that can be bought.";
        assertThat(says.left(STRIPES, new WhatIsLeft.Unknown(SHORT))).containsExactly("No yarn in hand is entered.");
        assertThat(says.left(STRIPES, new WhatIsLeft.NotEnough(SHORT)))
                .containsExactly(missing, "No other choice among these yarns is enough and keeps the picture.", margin);
        assertThat(says.left(STRIPES, new WhatIsLeft.Undecided(SHORT)))
                .containsExactly(
                        missing,
                        "The search was ended before it found a way with other yarns; there may be one.",
                        margin);
        // Round 2 goes from B to C, round 6 from C to A, rounds 7 to 9 from A, B and C to B, C and A.
        WhatIsLeft others =
                new WhatIsLeft.OtherYarns(SHORT, List.of("A", "C", "C", "A", "B", "A", "B", "C", "A"), false);
        assertThat(says.left(STRIPES, others))
                .containsExactly(
                        missing,
                        "With rounds 6 and 9 in Peat, round 7 in Chalk and rounds 2 and 8 in Fog it is enough, and the picture"
                                + " stays the same.",
                        "There may be a way that changes fewer rounds; the search was ended before it had tried them all.",
                        margin);
    }

    @Test
    void hooks_and_the_weight_of_the_yarn_are_named_where_they_are_known() {
        PatternDetails making = PatternDetails.NONE
                .withHook(Optional.of(HookSize.ofMm(5)))
                .withBack(Optional.of(Back.DEFAULT))
                .withYarnWeight(OptionalInt.of(4));
        assertThat(says.tools(PatternDetails.NONE)).isEmpty();
        assertThat(says.tools(making))
                .containsExactly(
                        "Hook: 5 mm (US H-8, UK 6).",
                        "Hook of the back layer: 4.5 mm (US 7, UK 7).",
                        "Yarn of weight 4 Medium: usually a hook of 5.5 to 6.5 mm, 11 to 14 plain stitches in 10 cm.",
                        "The hook of this border is a different one; go by the swatch.");
        assertThat(says.tools(making.withYarnWeight(OptionalInt.of(3)))).hasSize(3);
    }

    @Test
    void rounds_in_a_row_are_written_from_the_first_to_the_last() {
        assertThat(says.swap(new YarnSwap(List.of(1, 2, 3, 5, 6, 8), PEAT, List.of(CHALK, FOG))))
                .isEqualTo("Rounds 1 to 3, 5, 6 and 8 (Peat) could be worked in Chalk or Fog.");
        assertThat(says.swap(new YarnSwap(List.of(4), PEAT, List.of())))
                .isEqualTo("Round 4 (Peat) cannot be worked in any other of these yarns.");
    }

    @Test
    void a_hook_and_a_weight_are_metric_first() {
        assertThat(List.of(
                        says.hook(HookSize.ofMm(5)),
                        says.hook(HookSize.ofMm(6)),
                        says.hook(HookSize.ofMm(4.25)),
                        says.weight(4)))
                .containsExactly("5 mm (US H-8, UK 6)", "6 mm (US J-10, UK 4)", "4.25 mm", "4 Medium");
        assertThat(List.of(says.usual(4), says.usual(7)))
                .containsExactly(
                        "usually a hook of 5.5 to 6.5 mm, 11 to 14 plain stitches in 10 cm",
                        "usually a hook of 16 mm and larger, up to 5 plain stitches in 10 cm (printed table) or"
                                + " usually a hook of 15 mm and larger, up to 6 plain stitches in 10 cm (table on the web)");
    }
}
