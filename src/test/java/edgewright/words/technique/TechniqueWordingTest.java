package edgewright.words.technique;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.PerSide;
import edgewright.chart.Stitch;
import edgewright.chart.Technique;
import edgewright.chart.Terms;
import edgewright.file.ChartFiles;
import edgewright.file.ReadResult;
import edgewright.fit.Fit;
import edgewright.fit.FitPlan;
import edgewright.fit.FitQuestion;
import edgewright.texts.English;
import edgewright.words.TestCharts;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PlainText;
import edgewright.words.read.PatternReader;
import edgewright.words.technique.ShownTechnique.Ends;
import edgewright.words.technique.ShownTechnique.Kind;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TechniqueWordingTest {
    private static Chart sample(String name) {
        return ((ReadResult.Read) ChartFiles.read(Path.of("sample-charts", name + ChartFiles.ENDING))).chart();
    }

    private static List<ToldTechnique> told(Chart chart, WordingOptions options) {
        return TechniqueWording.of(
                PatternWriter.tree(chart, options), chart.making().technique(), options.language());
    }

    private static List<ShownTechnique> shown(Chart chart, WordingOptions options) {
        return told(chart, options).stream().map(ToldTechnique::shown).toList();
    }

    private static WordingOptions english(Chart chart) {
        return WordingOptions.of(chart, English.LANGUAGE);
    }

    private static String steps(Chart chart, WordingOptions options, Kind kind) {
        return told(chart, options).stream()
                .filter(each -> each.shown().kind() == kind)
                .flatMap(each -> each.steps().stream())
                .map(step -> step.replace('\u00a0', ' '))
                .collect(Collectors.joining("\n"));
    }

    private static FitPlan plan(PerSide<Integer> counted) {
        return (FitPlan) Fit.answer(TestCharts.TIDE_LADDER, FitQuestion.of(1, counted, Counting.STITCHES));
    }

    @ParameterizedTest
    @CsvSource({
        "reed-bank, START_AT_CORNER BACK_LOOP LONG CORNER INVISIBLE_JOIN",
        "tide-steps, START_AT_CORNER BACK_LOOP LONG CORNER INVISIBLE_JOIN",
        "lantern-posts, START_AT_CORNER BACK_LOOP LONG CORNER INVISIBLE_JOIN",
        "mooring-rope, START_AT_CORNER BACK_LOOP LONG CORNER INVISIBLE_JOIN",
        "mud-ripple, START_ABOVE_MARKER BACK_LOOP LONG CORNER INVISIBLE_JOIN",
        "saltings, START_ABOVE_MARKER BACK_LOOP LONG CORNER INVISIBLE_JOIN",
        "sluice-gate, START_ABOVE_MARKER BACK_LOOP LONG CORNER INVISIBLE_JOIN LAYERS"
    })
    void aPatternShowsWhatItUsesAndNothingElse(String name, String kinds) {
        Chart chart = sample(name);
        assertThat(shown(chart, english(chart)).stream().map(ShownTechnique::kind))
                .isEqualTo(Stream.concat(
                                Stream.of(Kind.ALONG_STITCHES, Kind.ROW_ENDS),
                                Stream.of(kinds.split(" ")).map(Kind::valueOf))
                        .toList());
    }

    @Test
    void aBorderOfBackLoopStitchesAloneShowsNoLongStitchAndOneOfPlainStitchesNoBackLoop() {
        Chart backLoops = TestCharts.chart("A b bb b\nB bb bb bb\n");
        assertThat(shown(backLoops, english(backLoops)).stream().map(ShownTechnique::kind))
                .contains(Kind.BACK_LOOP)
                .doesNotContain(Kind.LONG);
        Chart plain = TestCharts.chart("A p pp p\nB pp pp pp\n");
        assertThat(shown(plain, english(plain)))
                .contains(ShownTechnique.of(Kind.CORNER).with(Stitch.PLAIN))
                .noneMatch(each -> each.kind() == Kind.BACK_LOOP || each.kind() == Kind.LONG);
    }

    @Test
    void theChainsOfTheCornerAndTheWaysOfBeginningAndClosingAreThoseOfTheDesigner() {
        assertThat(shown(sample("mooring-rope"), english(sample("mooring-rope"))))
                .contains(ShownTechnique.of(Kind.CORNER).withChains(1));
        assertThat(shown(sample("sluice-gate"), english(sample("sluice-gate"))))
                .contains(ShownTechnique.of(Kind.CORNER).withChains(3));
        for (Technique.Join join : Technique.Join.values()) {
            for (Technique.Close close : Technique.Close.values()) {
                Chart chart = sample("tide-steps");
                chart = chart.withMaking(chart.making().withTechnique(new Technique(join, close)));
                assertThat(shown(chart, english(chart)))
                        .contains(
                                ShownTechnique.of(Kind.START_AT_CORNER).with(join),
                                ShownTechnique.of(close == Technique.Close.SLIP ? Kind.SLIP_JOIN : Kind.INVISIBLE_JOIN)
                                        .with(join)
                                        .with(Ends.CORNER));
            }
        }
    }

    @Test
    void aPieceThatIsPutRightShowsHowStitchesAreMadeMoreOrFewer() {
        // Counted in round 1, where 45 stitches are wanted on a side of five repeats: three, and five, too many or too
        // few.
        PerSide<Integer> tooMany = PerSide.of(46, 46, 46, 46);
        assertThat(shown(TestCharts.TIDE_LADDER, english(TestCharts.TIDE_LADDER).withPiece(plan(tooMany))))
                .contains(ShownTechnique.of(Kind.TWO_TOGETHER))
                .noneMatch(each -> each.kind() == Kind.TWO_IN_ONE);
        PerSide<Integer> tooFew = PerSide.of(44, 44, 44, 44);
        assertThat(shown(TestCharts.TIDE_LADDER, english(TestCharts.TIDE_LADDER).withPiece(plan(tooFew))))
                .contains(ShownTechnique.of(Kind.TWO_IN_ONE))
                .noneMatch(each -> each.kind() == Kind.TWO_TOGETHER);
    }

    @Test
    void theStepsOfALongStitchSayWhichLoopAndWhatIsCovered() {
        Chart chart = sample("reed-bank");
        assertThat(steps(chart, english(chart), Kind.LONG)).isEqualTo("""
                        Wind the yarn once round the hook. Put the hook from below under the free front loop of the stitch two rounds below.
                        Draw up a loop to the height of the round and finish as a tr. The stitch lies in front of the round between.
                        Leave the stitch between unworked: the long stitch covers it.""");
        assertThat(steps(chart, english(chart).withTerms(Terms.US), Kind.LONG)).contains("finish as a dc.");
    }

    @Test
    void theStepsOfACornerSayWhichChainAndWhichLoop() {
        assertThat(steps(sample("mooring-rope"), english(sample("mooring-rope")), Kind.CORNER))
                .isEqualTo("""
                        Work the last stitch of the side into the corner chain of the round below. A dc blo takes the back loop of the chain.
                        Make 1 ch.
                        Work the first stitch of the next side into the same corner chain.""");
        assertThat(steps(sample("sluice-gate"), english(sample("sluice-gate")), Kind.CORNER))
                .isEqualTo("""
                        Work the last stitch of the side into the first chain of the corner in the round below. A dc blo takes the back loop of the chain.
                        Make 3 ch.
                        Work the first stitch of the next side into the last chain of the same corner. The middle chain stays empty.""");
    }

    /** What the joining says of closing a round stands again in the steps, sentence by sentence. */
    @ParameterizedTest
    @EnumSource(Technique.Join.class)
    void theStepsOfTheInvisibleJoinAreThoseOfTheJoining(Technique.Join join) {
        Chart chart = sample("sluice-gate");
        chart = chart.withMaking(chart.making().withTechnique(new Technique(join, Technique.Close.INVISIBLE)));
        String joining = PatternWriter.write(chart, english(chart)).parts().stream()
                .filter(part -> part.kind() == PatternPart.Kind.JOINING)
                .map(part -> part.blocks().toString().replace('\u00a0', ' '))
                .collect(Collectors.joining());
        String steps = steps(chart, english(chart), Kind.INVISIBLE_JOIN);
        for (String words : List.of(
                "pull the end out of the last stitch and thread the needle with it",
                join == Technique.Join.STANDING
                        ? "under both top loops of the second stitch of the round"
                        : "under both top loops of the first counted stitch",
                "back into the top of the last stitch",
                "ntil the new loop has the size of a stitch")) {
            assertThat(joining).contains(words);
            assertThat(steps).contains(words);
        }
    }

    @Test
    void theOtherHandSeesTheFigureFromTheOtherSideAndDoesTheSame() {
        Chart chart = sample("sluice-gate");
        List<ToldTechnique> right = told(chart, english(chart));
        List<ToldTechnique> left = told(chart, english(chart).withHand(HookHand.LEFT));
        assertThat(left.stream().map(ToldTechnique::steps))
                .isEqualTo(right.stream().map(ToldTechnique::steps).toList());
        assertThat(left.stream().map(ToldTechnique::alternative))
                .isEqualTo(right.stream()
                        .map(each -> each.alternative()
                                .replaceAll("\\bright\\b", "@")
                                .replaceAll("\\bleft\\b", "right")
                                .replace("@", "left"))
                        .toList())
                .isNotEqualTo(right.stream().map(ToldTechnique::alternative).toList());
    }

    @Test
    void aPatternThatTellsItsTechniquesIsReadBackLikeOneThatDoesNot() {
        Chart chart = sample("sluice-gate");
        WordingOptions options = english(chart);
        String told = PlainText.of(PatternWriter.write(chart, options.withTechniques(true)));
        String untold = PlainText.of(PatternWriter.write(chart, options));
        assertThat(told).contains("Techniques\n----------\n").contains("  1. Put the hook under");
        assertThat(untold).doesNotContain("Techniques");
        assertThat(PatternReader.read(told, English.LANGUAGE)).isEqualTo(PatternReader.read(untold, English.LANGUAGE));
    }
}
