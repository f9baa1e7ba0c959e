package edgewright.words.write;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Back;
import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.HookSize;
import edgewright.chart.NamedSize;
import edgewright.chart.PatternDetails;
import edgewright.chart.PerSide;
import edgewright.chart.Round;
import edgewright.chart.Side;
import edgewright.chart.Start;
import edgewright.chart.Terms;
import edgewright.fit.Fit;
import edgewright.fit.FitPlan;
import edgewright.fit.FitQuestion;
import edgewright.fit.PatternSize;
import edgewright.texts.English;
import edgewright.texts.Language;
import edgewright.texts.Messages;
import edgewright.words.SeededCharts;
import edgewright.words.TestCharts;
import edgewright.words.page.PatternPart;
import edgewright.words.page.PatternText;
import edgewright.words.page.PlainText;
import edgewright.words.page.RoundParts;
import edgewright.words.page.TextBlock;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.PatternYarn;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Charts are written in the conventions of the trade. */
class PatternWriterTest {
    private static final Messages PHRASES = English.LANGUAGE.messages("words/phrases");
    private static final WordingOptions UK = WordingOptions.of(TestCharts.TIDE_LADDER, English.LANGUAGE);

    @Test
    void theExampleRoundIsWrittenAsTheFormatShowsIt() {
        // Counts from the geometry: 1 + 2 + 6 + 8m, so 49 for m = 5 and 73 for m = 8.
        assertThat(TestCharts.lines(TestCharts.TIDE_LADDER, 3, UK))
                .containsExactly("Round 3 (Peat): 4 dc blo; *(1 drop tr, 1 dc blo) twice, 1 drop tr, 3 dc blo; "
                        + "rep from * to last 5 sts; 1 drop tr, 1 dc blo, 1 drop tr, 2 dc blo; corner. 49 (73) sts.");
    }

    @Test
    void aRoundCanBeTakenApart() {
        RoundParts.OfAllSides parts = parts(3);
        assertThat(parts.start()).isEmpty();
        assertThat(Stream.of(parts.fromCorner(), parts.repeat(), parts.toCorner(), parts.corner(), parts.sides())
                        .map(part -> part.replace(Language.NO_BREAK, ' ')))
                .containsExactly(
                        "4 dc blo",
                        "*(1 drop tr, 1 dc blo) twice, 1 drop tr, 3 dc blo; rep from * to last 5 sts",
                        "1 drop tr, 1 dc blo, 1 drop tr, 2 dc blo",
                        "2 ch",
                        "Work this on all four sides.");
        assertThat(parts(1).repeat().replace(Language.NO_BREAK, ' ')).isEqualTo("dc blo in every st");
    }

    private static RoundParts.OfAllSides parts(int round) {
        return (RoundParts.OfAllSides) PatternWriter.parts(TestCharts.TIDE_LADDER, round, UK);
    }

    @Test
    void theSameRoundInUSTermsDiffersInTheStitchesOnly() {
        assertThat(work(TestCharts.TIDE_LADDER, 3, UK.withTerms(Terms.US)))
                .isEqualTo("4 sc blo; *(1 drop dc, 1 sc blo) twice, 1 drop dc, 3 sc blo; "
                        + "rep from * to last 5 sts; 1 drop dc, 1 sc blo, 1 drop dc, 2 sc blo; corner.");
    }

    @Test
    void aRoundOfOneStitchThroughoutSaysSo() {
        assertThat(work(TestCharts.TIDE_LADDER, 1, UK)).isEqualTo("dc blo in every st; corner.");
        assertThat(work(TestCharts.TIDE_LADDER, 5, UK)).isEqualTo("dc in every st; corner.");
    }

    @Test
    void aChainInsideASideMissesAStitch() {
        assertThat(work(TestCharts.TIDE_LADDER, 4, UK)).contains("1 ch, miss 1 st");
        assertThat(work(TestCharts.TIDE_LADDER, 4, UK.withTerms(Terms.US))).contains("1 ch, skip 1 st");
    }

    @Test
    void aStitchThatFillsTheMiddleOfASideIsWorkedUpToTheLastStitches() {
        Chart chart = TestCharts.chart("A bb bbbb bbl");
        assertThat(work(chart, 1, UK)).isEqualTo("dc blo in every st to last st; 1 drop tr; corner.");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void theChainsOfTheCornersAreToldOnceAndEveryRoundNamesTheCorner(int chains) {
        Chart chart = TestCharts.TIDE_LADDER.withCorner(
                TestCharts.TIDE_LADDER.corner().withChains(chains));
        for (int round = 1; round <= 5; round++) {
            assertThat(work(chart, round, UK)).endsWith("; corner.");
        }
        assertThat(text(chart, UK)).containsOnlyOnce("Corner: " + chains + " ch.");
    }

    @Test
    void aRoundWhoseCornerIsAnotherThanWasToldSaysIt() {
        Instructions told = PatternWriter.tree(TestCharts.ROPE_WALK, UK);
        BaseRound base = new BaseRound(told.base().side(), told.base().fewest(), OptionalInt.of(3));
        assertThat(PlainText.of(PatternWriter.write(told.withBase(base), English.LANGUAGE)))
                .contains("Rounds 1 and 2 (Peat, Chalk): dc blo in every st; corner: 2 ch.");
    }

    @Test
    void nothingIsAddedWhereTheMultipleComesOutEven() {
        // S(0) = 6m; with chains two more.
        assertThat(base(TestCharts.ROPE_WALK, UK))
                .isEqualTo("Multiple of 6, such as 30 (48) sts; corner chains not counted.");
        assertThat(base(TestCharts.chart("A bbb bbbb bb"), UK.withCounting(Counting.WITH_CHAINS)))
                .isEqualTo("Multiple of 4 plus 1, such as 25 (37) sts; counted with one corner chain at each end.");
    }

    @Test
    void theRoundsOfAPatternForEverySizeGiveTheCountsOfTheExamples() {
        // S(r) = 6m + 2r.
        assertThat(sizes(TestCharts.ROPE_WALK, UK))
                .containsExactly("32 (50) sts.", "34 (52) sts.", "36 (54) sts.", "38 (56) sts.");
        assertThat(sizes(TestCharts.ROPE_WALK, UK.withCounting(Counting.WITH_CHAINS)))
                .containsExactly("34 (52) sts.", "36 (54) sts.", "38 (56) sts.", "40 (58) sts.");
    }

    @Test
    void anyNumberWillDoWhereTheRepeatIsOneStitch() {
        assertThat(base(TestCharts.chart("A bb b b"), UK))
                .isEqualTo("Any number, at least 1, such as 6 (9) sts; corner chains not counted.");
    }

    @Test
    void theCountsOfAGivenSizeStandBesideEachRound() {
        // Published: (sc, ch 2, sc) corners, 155 and 103 a side, then 157 and 105, then 159 and 107; the corner chains
        // not counted. https://issuhub.com/view/index/22092?pageIndex=63
        Chart chart = TestCharts.chart("""
                A bb   bbbb b
                B bbb  bbbb bb
                A bbbb bbbb bbb
                """);
        WordingOptions size = UK.withRepeats(PerSide.pairs(38, 25));
        assertThat(sizes(chart, size))
                .containsExactly(
                        "Top and bottom 155 sts, left and right 103 sts.",
                        "Top and bottom 157 sts, left and right 105 sts.",
                        "Top and bottom 159 sts, left and right 107 sts.");
        assertThat(base(chart, size))
                .isEqualTo(
                        "Top and bottom 153 sts, left and right 101 sts; corner chains not counted; multiple of 4 plus 1.");
    }

    @Test
    void theFirstOfSeveralSizesStandsOutsideTheBrackets() {
        Chart chart = TestCharts.chart("A bb bbbb b");
        List<NamedSize> sizes = List.of(
                NamedSize.ofRepeats("Lap", 9, 9),
                NamedSize.ofRepeats("Bed", 12, 12),
                NamedSize.ofStitches("Hall", 61, 61));
        WordingOptions ofSizes = UK.withSize(PatternSize.named(chart.withMaking(PatternDetails.NONE.withSizes(sizes))));
        assertThat(sizes(chart, ofSizes)).containsExactly("39 (51, 63) sts.");
        assertThat(base(chart, ofSizes)).isEqualTo("37 (49, 61) sts; corner chains not counted; multiple of 4 plus 1.");
        List<NamedSize> oblong = List.of(NamedSize.ofRepeats("Lap", 9, 7), NamedSize.ofRepeats("Bed", 12, 12));
        assertThat(sizes(
                        chart, UK.withSize(PatternSize.named(chart.withMaking(PatternDetails.NONE.withSizes(oblong))))))
                .containsExactly("Top and bottom 39 (51) sts, left and right 31 (51) sts.");
    }

    @Test
    void aSideOf39StitchesIsCalled41WithItsCornerChains() {
        // Common practice, no source.
        Chart chart = TestCharts.chart("A bb bbbb b");
        assertThat(sizes(chart, UK.withRepeats(PerSide.all(9)))).containsExactly("39 sts.");
        assertThat(sizes(chart, UK.withRepeats(PerSide.all(9)).withCounting(Counting.WITH_CHAINS)))
                .containsExactly("41 sts.");
    }

    @Test
    void fourDifferentSidesAreNamed() {
        assertThat(sizes(TestCharts.chart("A bb bbbb b"), UK.withRepeats(PerSide.of(1, 2, 3, 4))))
                .containsExactly("Top 7 sts, left 11 sts, bottom 15 sts, right 19 sts.");
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 1, 5})
    void theCountsAreThoseOfTheChart(long repeats) {
        for (long seed = 0; seed < 500; seed++) {
            Chart chart = new SeededCharts(seed).any();
            Instructions tree = PatternWriter.tree(chart, UK.withRepeats(PerSide.all((int) repeats)));
            List<PerSide<Integer>> stated = tree.rounds().stream()
                    .flatMap(round -> round.side().counts().stream())
                    .toList();
            List<PerSide<Integer>> charted = chart.rounds().stream()
                    .map(round ->
                            PerSide.each(side -> round.side(side, (int) repeats).length()))
                    .toList();
            assertThat(stated).as("seed %d", seed).isEqualTo(charted);
            for (int r = 1; r <= tree.rounds().size(); r++) {
                int stitches = charted.get(r - 1).top();
                PerSide<Integer> example = PatternWriter.tree(chart, UK)
                        .rounds()
                        .get(r - 1)
                        .side()
                        .counts()
                        .get(0);
                assertThat((stitches - example.top()) % chart.round(r).repeat().length())
                        .isZero();
            }
        }
    }

    @Test
    void alikeRoundsStandTogetherAndAreCountedTogether() {
        Chart chart = TestCharts.chart("""
                A bb    bbbb b
                B bbb   bbbb bb
                A bbbb  bbbb bbb
                B bbbbl bbbl bbbb
                A pppppp  pppp ppppp
                A ppppppp pppp pppppp
                """);
        // S(r) = 1 + 2r + 4m, so 23 for r = 1 and m = 5.
        assertThat(rounds(chart, UK))
                .containsExactly(
                        "Rounds 1 to 3 (Peat, Chalk, Peat): dc blo in every st; corner. 23 (35) sts in round 1, "
                                + "then 2 more on every side in each round.",
                        "Round 4 (Chalk): 4 dc blo; *1 drop tr, 3 dc blo; rep from * to last 5 sts; 1 drop tr, 4 dc blo; corner. "
                                + "29 (41) sts.",
                        "Rounds 5 and 6 (Peat): dc in every st; corner. 31 (43) sts; 33 (45) sts.");
        assertThat(rounds(chart, UK.withEachRound(true))).hasSize(6);
    }

    @Test
    void yarnsThatComeInTurnAreNamedOnce() {
        Chart chart = TestCharts.chart("A b b b\nB bb b bb\nA bbb b bbb\nB bbbb b bbbb\nA bbbbb b bbbbb");
        assertThat(rounds(chart, UK).get(0)).startsWith("Rounds 1 to 5 (Peat, Chalk in turn): ");
        assertThat(rounds(
                                chart.withYarns(List.of(
                                        chart.yarns().get(0).withName("Peat in turn"),
                                        chart.yarns().get(1))),
                                UK)
                        .get(0))
                .startsWith("Rounds 1 to 5 (yarn A, Chalk in turn): ");
    }

    @Test
    void aTitleNamesNoMoreThanSixYarns() {
        Chart chart = TestCharts.chart("""
                A b b b
                A bb b bb
                B bbb b bbb
                A bbbb b bbbb
                B bbbbb b bbbbb
                B bbbbbb b bbbbbb
                A bbbbbbb b bbbbbbb
                """);
        assertThat(rounds(chart, UK))
                .containsExactly(
                        "Rounds 1 to 6 (Peat, Peat, Chalk, Peat, Chalk, Chalk): dc blo in every st; corner. 7 (10) sts in "
                                + "round 1, then 2 more on every side in each round.",
                        "Round 7 (Peat): dc blo in every st; corner. 19 (22) sts.");
    }

    @Test
    void aRoundOfManyRunsIsNotToldASecondTime() {
        // Two stitches more at each end, and so two groups more: the words are the same.
        Chart chart = TestCharts.chart("""
                A b    bb b
                B pp   bl pp
                A bbb  bb bbb
                B ppbl bl blpp
                """);
        assertThat(rounds(chart, UK))
                .containsExactly(
                        "Round 1 (Peat): dc blo in every st; corner. 12 (18) sts.",
                        "Round 2 (Chalk): 2 dc; *1 dc blo, 1 drop tr; rep from * to last 2 sts; 2 dc; corner. "
                                + "14 (20) sts.",
                        "Round 3 (Peat): dc blo in every st; corner. 16 (22) sts.",
                        "Round 4 (Chalk): as round 2. 18 (24) sts.");
    }

    /** The words of the rounds, a line for each title. */
    private static List<String> rounds(Chart chart, WordingOptions options) {
        return part(chart, options, PatternPart.Kind.ROUNDS).blocks().stream()
                .map(block -> String.join(" ", ((TextBlock.RoundWords) block).lines()))
                .map(line -> line.replace(Language.NO_BREAK, ' '))
                .toList();
    }

    @Test
    void yarnsThatShareANameAreCalledByTheirIds() {
        Chart chart = TestCharts.TIDE_LADDER.withYarns(List.of(
                TestCharts.TIDE_LADDER.yarns().get(0),
                TestCharts.TIDE_LADDER.yarns().get(1).withName("peat")));
        assertThat(TestCharts.lines(chart, 1, UK).get(0)).startsWith("Round 1 (yarn A): ");
        assertThat(TestCharts.lines(chart, 2, UK).get(0)).startsWith("Round 2 (yarn B): ");
    }

    @Test
    void onlyTheYarnsThatAreUsedAreAskedFor() {
        Chart chart = TestCharts.chart("B bb bbbb bbb");
        assertThat(PatternWriter.tree(chart, UK).yarns()).containsExactly(new PatternYarn("B", "Chalk"));
    }

    @Test
    void onlyTheAbbreviationsThatAreUsedAreExplained() {
        Chart plain = TestCharts.chart("A pp pppp ppp");
        assertThat(words(plain, UK)).containsExactly("dc", "ch", "st, sts");
        assertThat(words(TestCharts.TIDE_LADDER, UK))
                .containsExactly("dc blo", "dc", "drop tr", "ch", "miss", "rep", "st, sts");
        assertThat(words(TestCharts.TIDE_LADDER, UK.withTerms(Terms.US)))
                .containsExactly("sc blo", "sc", "drop dc", "ch", "skip", "rep", "st, sts");
    }

    @Test
    void aRaggedDraftIsWrittenAsItStands() {
        Chart ragged = TestCharts.TIDE_LADDER.withRound(2, Round.of("B", "bl", "", "bbb"));
        assertThat(TestCharts.lines(ragged, 2, UK.asDraft()))
                .containsExactly("Round 2 (Chalk): 1 dc blo, 1 drop tr, 3 dc blo; corner. 5 (5) sts.");
    }

    @Test
    void theTableOfCountsHasARowForEachRound() {
        assertThat(counts(UK.withRepeats(PerSide.pairs(2, 3))))
                .isEqualTo(new TextBlock.CountsTable(
                        "Stitches on a side, corner chains not counted.",
                        List.of("Round", "Yarn", "Top, bottom", "Left, right"),
                        List.of(
                                List.of("0", "base round", "19", "27"),
                                List.of("1", "Peat", "21", "29"),
                                List.of("2", "Chalk", "23", "31"),
                                List.of("3", "Peat", "25", "33"),
                                List.of("4", "Chalk", "27", "35"),
                                List.of("5", "Peat", "29", "37"))));
        assertThat(counts(UK).columns()).containsExactly("Round", "Yarn", "43 sts", "67 sts");
        assertThat(counts(UK).rows().get(0)).containsExactly("0", "base round", "43", "67");
    }

    @Test
    void aPatternForEverySizeReadsWell() throws Exception {
        assertThat(text(TestCharts.TIDE_LADDER, UK)).isEqualTo(golden("tide-ladder-uk.txt"));
    }

    @Test
    void aPatternForOneSizeReadsWell() throws Exception {
        WordingOptions options =
                UK.withTerms(Terms.US).withCounting(Counting.WITH_CHAINS).withRepeats(PerSide.pairs(6, 9));
        Chart chart =
                TestCharts.ROPE_WALK.withCorner(TestCharts.ROPE_WALK.corner().withChains(3));
        assertThat(text(chart, options)).isEqualTo(golden("rope-walk-us.txt"));
    }

    @Test
    void aPatternWithStartsReadsWell() throws Exception {
        Chart chart = TestCharts.TIDE_LADDER;
        chart = chart.withMaking(chart.making().withStart(Optional.of(Start.DEFAULT)));
        assertThat(text(chart, UK)).isEqualTo(golden("tide-ladder-starts-uk.txt"));
    }

    @Test
    void aPatternForTheLeftHandReadsWell() throws Exception {
        Chart chart = TestCharts.ROPE_WALK;
        Start start = new Start(OptionalInt.of(2), Side.LEFT, Side.BOTTOM);
        chart = chart.withMaking(chart.making().withStart(Optional.of(start)));
        WordingOptions options = UK.withHand(HookHand.LEFT).withRepeats(PerSide.of(6, 9, 6, 8));
        assertThat(text(chart, options)).isEqualTo(golden("rope-walk-left-uk.txt"));
    }

    @Test
    void theHandChangesTheOrderOfTheSidesAndTheNoteOnDirectionAndNothingElse() {
        for (long seed = 0; seed < 300; seed++) {
            SeededCharts seeded = new SeededCharts(seed);
            Chart chart = seeded.any();
            WordingOptions options = seeded.options();
            List<String> right = withoutTheHand(chart, options.withHand(HookHand.RIGHT));
            List<String> left = withoutTheHand(chart, options.withHand(HookHand.LEFT));
            assertThat(left).as("seed %d", seed).isEqualTo(right);
        }
    }

    /** All words but those on the hand, each list of four sides in one order. */
    private static List<String> withoutTheHand(Chart chart, WordingOptions options) {
        Messages written = options.language().messages("words/write");
        String[] directions = {written.text("direction-LEFT"), written.text("direction-RIGHT")};
        return PatternWriter.write(chart, options).parts().stream()
                .filter(part -> part.kind() != PatternPart.Kind.COUNTS)
                .flatMap(part -> PlainText.of(new PatternText(List.of(part)))
                        .replaceAll("\\s+", " ")
                        .lines())
                .map(line -> line.replace(directions[0], "").replace(directions[1], ""))
                .map(line -> line.replace(PHRASES.text("left-hand"), ""))
                .map(line -> line.replaceAll(" +", " ").strip())
                .filter(line -> !line.isEmpty())
                .map(line -> line.replaceAll(
                        "([Tt]op) (\\d+ sts?), right (\\d+ sts?), bottom (\\d+ sts?), left (\\d+ sts?)",
                        "$1 $2, left $5, bottom $4, right $3"))
                .toList();
    }

    @Test
    void aPatternForAPieceThatIsPutRightOnTheWayReadsWell() throws Exception {
        // Counted in round 1: 46, 35, 46 and 37 stitches, where a multiple of 8 plus 5 is wanted.
        FitQuestion question = FitQuestion.of(1, PerSide.of(46, 35, 46, 37), Counting.STITCHES);
        FitPlan plan = (FitPlan) Fit.answer(TestCharts.TIDE_LADDER, question);
        assertThat(PlainText.of(PatternWriter.write(TestCharts.TIDE_LADDER, UK.withPiece(plan))))
                .isEqualTo(golden("tide-ladder-fitted-uk.txt"));
        assertThat(PatternWriter.round(TestCharts.TIDE_LADDER, 2, UK.withPiece(plan))
                        .lines())
                .hasSize(6);
    }

    @Test
    void aPatternForADoubleBorderReadsWell() throws Exception {
        Chart chart = TestCharts.TIDE_LADDER;
        chart = chart.withMaking(
                chart.making().withBack(Optional.of(Back.DEFAULT)).withHook(Optional.of(HookSize.ofMm(5))));
        assertThat(text(chart, UK.withTerms(Terms.US))).isEqualTo(golden("tide-ladder-double-us.txt"));
    }

    @Test
    void aDraftSaysThatItIsOne() {
        assertThat(text(TestCharts.ROPE_WALK, UK.asDraft())).contains("\nDRAFT: not yet to be worked.\n");
        assertThat(text(TestCharts.ROPE_WALK, UK)).doesNotContain("DRAFT");
    }

    @Test
    void noLineIsWiderThanThePage() {
        for (long seed = 0; seed < 500; seed++) {
            SeededCharts seeded = new SeededCharts(seed);
            assertThat(text(seeded.any(), seeded.options()).lines())
                    .allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(PlainText.WIDTH));
        }
    }

    private static String text(Chart chart, WordingOptions options) {
        return PlainText.of(PatternWriter.write(chart, options));
    }

    /** What is said of the sides beside each round. */
    private static List<String> sizes(Chart chart, WordingOptions options) {
        return IntStream.rangeClosed(1, chart.rounds().size())
                .mapToObj(round -> PatternWriter.round(chart, round, options).counts())
                .map(counts -> counts.replace(Language.NO_BREAK, ' '))
                .toList();
    }

    /** What is said of the counts in the base round. */
    private static String base(Chart chart, WordingOptions options) {
        return part(chart, options, PatternPart.Kind.SET_UP).blocks().stream()
                .filter(TextBlock.RoundWords.class::isInstance)
                .map(block -> ((TextBlock.RoundWords) block).counts().replace(Language.NO_BREAK, ' '))
                .findFirst()
                .orElseThrow();
    }

    /** What is to be done in a round that is worked alike on all sides. */
    private static String work(Chart chart, int round, WordingOptions options) {
        TextBlock.RoundWords words = PatternWriter.round(chart, round, options);
        return words.steps()
                .get(0)
                .replace(words.counts(), "")
                .replace(Language.NO_BREAK, ' ')
                .strip();
    }

    private static List<String> words(Chart chart, WordingOptions options) {
        return part(chart, options, PatternPart.Kind.ABBREVIATIONS).blocks().stream()
                .map(block -> ((TextBlock.Entry) block).word())
                .toList();
    }

    private static TextBlock.CountsTable counts(WordingOptions options) {
        return (TextBlock.CountsTable) part(TestCharts.TIDE_LADDER, options, PatternPart.Kind.COUNTS)
                .blocks()
                .get(0);
    }

    private static PatternPart part(Chart chart, WordingOptions options, PatternPart.Kind kind) {
        return PatternWriter.write(chart, options).parts().stream()
                .filter(part -> part.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    private static String golden(String name) throws Exception {
        try (InputStream in = PatternWriterTest.class.getResourceAsStream("/edgewright/words/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
