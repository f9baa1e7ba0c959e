package edgewright.words.write;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Back;
import edgewright.chart.Ball;
import edgewright.chart.Chart;
import edgewright.chart.HookSize;
import edgewright.chart.NamedSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.PerSide;
import edgewright.chart.Start;
import edgewright.chart.Swatch;
import edgewright.chart.Technique;
import edgewright.chart.Technique.Close;
import edgewright.chart.Technique.Join;
import edgewright.chart.Terms;
import edgewright.chart.Yarn;
import edgewright.texts.English;
import edgewright.texts.Language;
import edgewright.words.TestCharts;
import edgewright.words.page.MarkdownText;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.PlainText;
import edgewright.words.page.TermsVersion;
import edgewright.words.page.TextBlock;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is needed, and how rounds are begun and closed. */
class NeedsAndJoiningTest {
    private static final Chart CHART = TestCharts.TIDE_LADDER.withMaking(PatternDetails.NONE
            .withHook(Optional.of(HookSize.ofMm(5)))
            .withBack(Optional.of(Back.DEFAULT))
            .withSwatch(Optional.of(new Swatch(16, 20)))
            .withYarnWeight(OptionalInt.of(4))
            .withSkill("You can count.")
            .withSizes(List.of(NamedSize.ofRepeats("Cot", 10, 12), NamedSize.ofStitches("Bed", 163, 203))));

    private static Chart inBalls() {
        List<Yarn> yarns = CHART.yarns().stream()
                .map(yarn -> yarn.withBall(Optional.of(new Ball(75, 50))))
                .toList();
        return CHART.withYarns(yarns);
    }

    private static String part(Chart chart, WordingOptions options, PatternPart.Kind kind) {
        PatternText text = PatternWriter.write(chart, options);
        return PlainText.of(new PatternText(text.parts().stream()
                        .filter(part -> part.kind() == kind)
                        .toList()))
                .replaceAll("\n  +", " ")
                .replace(Language.NO_BREAK, ' ');
    }

    @Test
    void whatIsNeededIsEnoughToBuyFromInEachSize() {
        // 10 and 12 repeats of 8 on 3 are 83 and 99 stitches of 6.25 mm: 51.9 and 61.9 cm; five rounds of 5 mm on two
        // edges add
        // 5 cm. 163 and 203 stitches: 101.9 and 126.9 cm.
        assertThat(part(inBalls(), WordingOptions.of(CHART, English.LANGUAGE), PatternPart.Kind.NEEDS))
                .isEqualTo("""
                        What you need
                        -------------
                        Yarn A: Peat
                        Yarn B: Chalk
                        Weight of yarn: 4 Medium (UK: aran or 10 ply)
                        Length of A: 224 m or 244 yd (430 m or 471 yd), 3 (6) balls of 75 m (82 yd) and 50 g
                        Length of B: 45 m or 49 yd (85 m or 93 yd), 1 (2) balls of 75 m (82 yd) and 50 g
                        Lengths include 15 cm (6 in) for each end and 10% to spare, but not the base round on the piece. \
                        All of the back layer and the joining round are in the yarn of the outermost round. They are \
                        estimates: measure your own stitches, or buy a ball more.
                        Hook: 5 mm (US H-8, UK 6)
                        Hook for the back: 4.5 mm (US 7, UK 7)
                        Tension: 16 stitches, 20 rounds to 10 cm (4 in) of border
                        Border width: about 2.5 cm (1 in)
                        Size Cot: about 57 by 67 cm (22½ by 26¼ in); the piece alone 52 by 62 cm (20½ by 24¼ in)
                        Size Bed: about 107 by 132 cm (42 by 52 in); the piece alone 102 by 127 cm (40 by 50 in)
                        Skill: You can count.
                        If your tension is different, change the hook. A blunt needle for joins and ends, and \
                        stitch markers if you like.
                        Photograph the yarns side by side in black and white: if the greys are close, the pattern \
                        will not show.
                        """);
    }

    @Test
    void markdownSaysTheSame() {
        PatternText text = PatternWriter.write(inBalls(), WordingOptions.of(CHART, English.LANGUAGE));
        String markdown = MarkdownText.of(List.of(new TermsVersion(English.LANGUAGE, Terms.UK, text)));
        text.parts().stream()
                .filter(part -> part.kind() == PatternPart.Kind.NEEDS)
                .flatMap(part -> part.blocks().stream())
                .filter(TextBlock.Entry.class::isInstance)
                .map(block -> ((TextBlock.Entry) block).text())
                .forEach(said -> assertThat(markdown.replace("\\", "").replace(Language.NO_BREAK, ' '))
                        .contains(said.replace(Language.NO_BREAK, ' ')));
    }

    @Test
    void aPatternForAnySizeNamesItsTwoExamplesOnce() {
        String words = PlainText.of(PatternWriter.write(
                CHART, WordingOptions.of(CHART, English.LANGUAGE).withoutRepeats()));
        assertThat(words.replaceAll("\\s+", " "))
                .containsOnlyOnce("Numbers such as 43 (67) are two examples")
                .doesNotContain("Cot");
    }

    @ParameterizedTest
    @EnumSource
    void onlyTheChosenJoinIsSpokenOf(Join join) {
        for (Close close : Close.values()) {
            for (boolean along : List.of(false, true)) {
                PatternDetails making = PatternDetails.NONE.withTechnique(new Technique(join, close));
                Chart chart = CHART.withMaking(along ? making.withStart(Optional.of(Start.DEFAULT)) : making);
                String words = part(
                        chart,
                        WordingOptions.of(chart, English.LANGUAGE).withRepeats(PerSide.all(6)),
                        PatternPart.Kind.JOINING);
                assertThat(words.contains("standing stitch")).isEqualTo(join == Join.STANDING);
                assertThat(words.contains("one chain")).isEqualTo(join != Join.STANDING);
                assertThat(words.contains("joining chain")).isEqualTo(join == Join.CHAIN && close == Close.INVISIBLE);
                assertThat(words.contains("invisible join")).isEqualTo(close == Close.INVISIBLE);
                assertThat(words.contains("fasten off")).isEqualTo(close == Close.SLIP);
            }
        }
    }

    @Test
    void aStandingStitchHasNoJoiningChainSoTheNeedleGoesRoundTheSecondStitch() {
        // A loop round the first stitch would add one that shows:
        // http://www.msweaver.com/tutorials/other-crochet/fastening-off-invisibly/
        Chart chart =
                CHART.withMaking(PatternDetails.NONE.withTechnique(new Technique(Join.STANDING, Close.INVISIBLE)));
        assertThat(part(chart, WordingOptions.of(chart, English.LANGUAGE), PatternPart.Kind.JOINING))
                .isEqualTo("""
                        Joining and closing a round
                        ---------------------------
                        Begin round 1 with the first stitch after any corner. Begin with a slip knot on the hook, and \
                        work that stitch into its corner chain as a standing stitch. It counts as any other. Begin \
                        each later round at the corner diagonally opposite the last start, so that the ends lie apart.

                        Close every round after its last corner, with an invisible join. Cut the yarn, pull the end \
                        out of the last chain and thread the needle with it. Go under both top loops of the second \
                        stitch of the round, and back into the top of the last chain: the new loop lies over the first \
                        stitch and takes the place of its top. Pull until the new loop has the size of a stitch. This \
                        loop is not counted again. Leave both ends at the back, where the round began.
                        """);
    }

    @Test
    void notesStandOnlyWhereSomethingUsesThem() {
        Chart plain = TestCharts.chart("A pp pppp ppp");
        String notes = part(plain, WordingOptions.of(plain, English.LANGUAGE), PatternPart.Kind.NOTES);
        assertThat(notes)
                .contains("A dc takes both loops of the corner chain.")
                .doesNotContain(
                        "A number before a stitch", "back loop", "asterisk", "To the last", "chain inside a side");
    }
}
