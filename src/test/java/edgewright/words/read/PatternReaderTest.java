package edgewright.words.read;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.Chart;
import edgewright.chart.Counting;
import edgewright.chart.HookHand;
import edgewright.chart.HookSize;
import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.chart.Terms;
import edgewright.texts.English;
import edgewright.words.TestCharts;
import edgewright.words.page.PlainText;
import edgewright.words.tree.BackRound;
import edgewright.words.tree.BaseRound;
import edgewright.words.tree.ChangingStep;
import edgewright.words.tree.Group;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.Multiple;
import edgewright.words.tree.PatternYarn;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.StartMarker;
import edgewright.words.tree.StartMarkers;
import edgewright.words.tree.WrittenBack;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import edgewright.words.write.PatternWriter;
import edgewright.words.write.WordingOptions;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Patterns that were typed by hand are read as they are meant, or refused at the word that is not understood. */
class PatternReaderTest {
    private static final Run B1 = new Run(1, Stitch.BACK_LOOP);
    private static final Run B3 = new Run(3, Stitch.BACK_LOOP);
    private static final Run L1 = new Run(1, Stitch.LONG);

    private static final WrittenRound RUNGS =
            round(List.of(B1), new Group(List.of(L1, B3), 2), List.of(L1, B1), SideSize.unstated());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1 dc blo; *1 drop tr, 3 dc blo; repeat from * to the last 2 sts; 1 drop tr, 1 dc blo; corner: 2 ch",
                "From the corner: 1 dc blo; *1 drop tr, 3 dc blo; repeat from * to the last 2 sts; 1 drop tr, 1 dc blo; "
                        + "corner: 2 ch. Work this on all four sides.",
                "from corner 1 dc blo, * 1 drop tr , 3 dc blo , rep from* to last 2 sts, 1 drop tr, 1 dc blo, corner 2 ch",
                "ONE DC BLO; *ONE DROP TR, THREE DC BLO; REP FROM * TO LAST TWO STITCHES; ONE DROP TR, ONE DC BLO; "
                        + "CORNER: TWO CHAINS. REPEAT ON ALL FOUR SIDES",
                "1dcblo\n*1droptr 3dcblo\nrep from *\nto the last 2\nstitches\n1droptr 1dcblo\ncorner: ch2",
                "1\tdc  blo;\u00a0*1 drop\n    tr, 3 dc blo; repeat\n    from * to the last 02 st. 1 drop tr. 1 dc blo. corner: 2 chs.",
                "1 blo dc; *1 drop tr, 3 dc in blo; repeat from * to last 2 sts; 1 drop tr, 1 dc blo; corner: 2 ch "
                        + "on all sides",
            })
    void theSameRoundIsReadHoweverItIsTyped(String typed) {
        assertThat(rounds("UK terms\nRound 1, Peat: " + typed)).containsExactly(RUNGS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Round 1, Peat.", "Rnd 1, Peat:", "RND ONE, peat;", "rd 1 (Peat)", "Round 1 - Peat:"})
    void aRoundIsNamedInManyWays(String name) {
        String instructions = " 1 dc blo; *1 drop tr, 3 dc blo; repeat from * to the last 2 sts; 1 drop tr, 1 dc blo; "
                + "corner: 2 ch.";
        assertThat(rounds("UK terms\nYarn A: Peat\n\n" + name + instructions)).containsExactly(RUNGS);
        assertThat(rounds("UK terms\n\n" + name + "\n" + instructions)).containsExactly(RUNGS);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dc blo in every stitch; corner: 2 ch",
                "dc blo in each st, corner: ch 2",
                "DC BLO IN EVERY ST; CORNER: 2 CH. Work on all four sides",
                "*1 dc blo; rep from * to the corner; corner: 2 ch",
                "dc blo in every stitch to the corner; corner: 2 ch",
            })
    void oneStitchThroughoutIsAGroupOfOneThatGoesOnToTheCorner(String typed) {
        assertThat(rounds("UK terms\nRound 1, Peat: " + typed))
                .containsExactly(round(List.of(), new Group(List.of(B1), 0), List.of(), SideSize.unstated()));
    }

    private static final String STARTED = """
            UK terms
            Set-up
            Base round. 11 sts; corner: 2 ch.
            Marker for odd rounds: left edge, stitch 4 of the base round (the corner chain is 1).
            Marker for even rounds: right edge, stitch 3 of the base round.

            Rounds
            Round 1, Peat: 1 dc; *2 dc, ^ 1 dc blo; rep from * to the corner; corner.
            Round 2, Peat: start 2 sts after the marker. 5 dc, ^ 2 dc blo; dc in every st to the corner; corner.
            Round 3, Peat: dc blo in every st; corner.
            Round 4, Peat: Begin at a corner. 2 dc; *1 dc; rep from * to the corner; corner.
            Round 5, Peat: 1 dc; ^ dc blo in every st to last 2 sts; 2 dc; corner.
            Round 6, Peat: 1 dc; *1 dc blo; rep from * to last 9 sts; 6 dc, ^, 3 dc; corner.
            """;

    private static WrittenRound alongSide(
            int number, SideInstructions words, Side side, int stitch, StartMark.Part part, int step) {
        WrittenStart start = new WrittenStart(side, stitch, new StartMark(part, step));
        return new WrittenRound.AlongSide(number, "A", SideSize.unstated(), words, 2, start);
    }

    @Test
    void aRoundMayStartAboveAMarker() {
        Run p1 = new Run(1, Stitch.PLAIN);
        Group toCorner = new Group(List.of(B1), 0);
        Instructions pattern = pattern(STARTED);
        assertThat(pattern.markers())
                .contains(new StartMarkers(0, new StartMarker(Side.LEFT, 4), new StartMarker(Side.RIGHT, 3)));
        assertThat(pattern.rounds())
                .containsExactly(
                        alongSide(
                                1,
                                SideInstructions.of(
                                        List.of(p1), new Group(List.of(new Run(2, Stitch.PLAIN), B1), 0), List.of()),
                                Side.LEFT,
                                4,
                                StartMark.Part.GROUP,
                                1),
                        alongSide(
                                2,
                                SideInstructions.of(
                                        List.of(new Run(5, Stitch.PLAIN), new Run(2, Stitch.BACK_LOOP)),
                                        new Group(List.of(p1), 0),
                                        List.of()),
                                Side.RIGHT,
                                6,
                                StartMark.Part.BEFORE,
                                1),
                        alongSide(
                                3,
                                SideInstructions.of(List.of(), toCorner, List.of()),
                                Side.LEFT,
                                6,
                                StartMark.Part.GROUP,
                                0),
                        new WrittenRound.AtCorner(
                                4,
                                "A",
                                SideSize.unstated(),
                                SideInstructions.of(
                                        List.of(new Run(2, Stitch.PLAIN)), new Group(List.of(p1), 0), List.of()),
                                2),
                        alongSide(
                                5,
                                SideInstructions.of(
                                        List.of(p1), new Group(List.of(B1), 2), List.of(new Run(2, Stitch.PLAIN))),
                                Side.LEFT,
                                8,
                                StartMark.Part.GROUP,
                                0),
                        alongSide(
                                6,
                                SideInstructions.of(
                                        List.of(p1),
                                        new Group(List.of(B1), 9),
                                        List.of(new Run(6, Stitch.PLAIN), new Run(3, Stitch.PLAIN))),
                                Side.RIGHT,
                                8,
                                StartMark.Part.AFTER,
                                1));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "left edge, stitch | left-hand edge: in stitch",
                "left edge, | left side,",
                "stitch 4 of the base round (the corner chain is 1) | stitch 4 of the base round",
                "Marker for odd rounds | MARKER FOR ODD ROUNDS",
                "start 2 sts after | begin 2 stitches after",
                "Begin at a corner | start at any corner",
            })
    void aStartIsSaidInMoreThanOneWay(String one, String other) {
        assertThat(pattern(STARTED.replace(one, other))).isEqualTo(pattern(STARTED));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "stitch 4 | stitch 0 | line 4, column 42: '0', but expected a number from 1 to 999999999",
                "left edge, | hem, | line 4, column 24: 'hem', but expected an edge: top, left-hand, bottom or right-hand",
                "of the base round ( | of my base round ( | line 4, column 47: 'my', but expected 'of the base round' or 'of round' and its number",
                "Marker for even | Marker for odd | line 5, column 1: 'Marker', but expected a marker for other rounds, since these have one",
                "stitch 3 of the base round | stitch 3 of round 1 | line 4, column 1: 'Marker', but expected a marker for odd rounds and one for even rounds, in the same round",
                "2 dc, ^ 1 dc blo | 2 dc, 1 dc blo | line 8, column 16: '1', but expected the sign ^ where the round starts, since the set-up has a marker",
                "2 dc, ^ 1 dc blo | ^ 2 dc, ^ 1 dc blo | line 8, column 31: '^', but expected no second sign for the start of the round",
                "5 dc, ^ 2 | (3 dc, ^ 2 dc) twice, 2 | line 9, column 53: '^', but expected no sign for the start of the round inside brackets",
                "after the marker | at the marker | line 9, column 28: 'at', but expected 'after the marker'",
                "2 sts after | 0 sts after | line 9, column 22: '0', but expected a number from 1 to 999999999",
                "2 dc; *1 dc; | 2 dc; *^ 1 dc; | line 11, column 42: '^', but expected no sign for a start, since this round begins at a corner",
            })
    void aStartThatDoesNotGoTogetherIsRefusedAtItsPlace(String right, String wrong, String problem) {
        assertThat(problems(STARTED.replace(right, wrong))).containsExactly(problem);
    }

    @Test
    void aMarkOfAStartNeedsAMarker() {
        String round = "UK terms\nRound 1, Peat: 1 dc, ^ 2 dc blo; corner: 2 ch";
        assertThat(problems(round))
                .containsExactly(
                        "line 2, column 22: '^', but expected no sign for a start, since this round begins at a corner");
        assertThat(problems(round.replace("1 dc,", "start 1 st after the marker. 1 dc,")))
                .containsExactly(
                        "line 2, column 16: 'start', but expected a marker in the set-up, above which a round can start");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Left-handed", "For left-handed makers.", "For makers who crochet with the left hand."})
    void thePatternSaysAtItsHeadThatItIsForTheLeftHand(String words) {
        String round = "\nUK terms\nRound 1, Peat: 1 dc; corner: 2 ch";
        assertThat(pattern(words + round).hand()).isEqualTo(HookHand.LEFT);
        assertThat(pattern("Tide Ladder\n" + words + round).hand()).isEqualTo(HookHand.LEFT);
        assertThat(pattern("Tide Ladder" + round).hand()).isEqualTo(HookHand.RIGHT);
    }

    private static final String CHANGED = "UK terms\nRound 1, Peat. Along the top: 4 dc, 2 dc in the next st, 3 dc; "
            + "corner: 2 ch. Along the left: (2 dc, dc2tog) 2 times, 1 dc; corner: 2 ch. Along the bottom: 1 dc, 1 dc blo "
            + "and 1 dc in next st, dc2tog blo; corner: 2 ch. Along the right, from the corner: 9 dc; corner: 2 ch.";

    @Test
    void aRoundWithChangesHasWordsForEachSide() {
        ChangingStep together = new ChangingStep.Together(Stitch.PLAIN);
        assertThat(rounds(CHANGED))
                .containsExactly(new WrittenRound.PuttingRight(
                        1,
                        "A",
                        SideSize.unstated(),
                        PerSide.of(
                                List.of(dc(4), new ChangingStep.TwoInOne(Stitch.PLAIN, Stitch.PLAIN), dc(3)),
                                List.of(new ChangingStep.Times(List.of(dc(2), together), 2), dc(1)),
                                List.of(
                                        dc(1),
                                        new ChangingStep.TwoInOne(Stitch.BACK_LOOP, Stitch.PLAIN),
                                        new ChangingStep.Together(Stitch.BACK_LOOP)),
                                List.of(dc(9))),
                        2));
    }

    private static ChangingStep dc(int stitches) {
        return new ChangingStep.Work(new Run(stitches, Stitch.PLAIN));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4 dc, 2 dc in | 4 dc, 3 dc in | '3', but expected 2, the stitches worked into one",
                "1 dc blo and | 2 dc blo and | '2', but expected 1, since each of the two is made once",
                "and 1 dc in next st | and 1 dc | ',', but expected 'in the next st'",
                "Along the left | Along the top | 'top', but expected an edge that has no words yet",
                "Along the bottom | On the bottom | 'On', but expected 'Along the' and an edge",
                "9 dc; corner: 2 ch | 9 dc; corner: 3 ch | 'corner', but expected 2 chains, as at the corner before",
                "dc2tog) 2 times | dc2tog) 1 times | '1', but expected a number from 2, how often the brackets are worked",
                "dc2tog) 2 times | dc2tog) 2 | ',', but expected 'twice', or a number and 'times'",
                "dc2tog blo | *dc2tog blo | '*', but expected a number and a stitch, two worked together, brackets, or 'corner'",
            })
    void aRoundWithChangesThatDoesNotGoTogetherIsRefused(String right, String wrong, String problem) {
        assertThat(problems(CHANGED.replace(right, wrong)).get(0)).endsWith(problem);
    }

    private static final String BACK =
            "UK terms\nRound 1, Peat: dc in every st; corner: 2 ch.\n\nBack layer\n\nDo it with care.\n\n"
                    + "Hook for the back layer: 4.5 mm\n\nBack base round: each side: 7 sts.\n\nBack rnd one, as round 1 of the front: "
                    + "dc in each stitch between the corners, corner 1 dc, 2 ch, 1 dc. Work on all four sides.\n\n"
                    + "Back round 2. each side: 13 sts; tr in every stitch between the corners; corner: 2 tr, 2 ch, 2 tr\n\n"
                    + "Joining round: sl st in every stitch and every corner chain through the back loops of both layers";

    @Test
    void aBackLayerIsReadWithItsJoin() {
        SideSize base = SideSize.of(PerSide.all(7));
        SideSize second = SideSize.of(PerSide.all(13));
        assertThat(pattern(BACK).back())
                .hasValue(new WrittenBack(
                        Optional.of(HookSize.ofMm(4.5)),
                        base,
                        List.of(
                                new BackRound(1, OptionalInt.of(1), SideSize.unstated(), BackRound.Height.LOW, 1, 2),
                                new BackRound(2, OptionalInt.empty(), second, BackRound.Height.TALL, 2, 2)),
                        true));
        assertThat(pattern(BACK.substring(0, BACK.indexOf("Joining")))
                        .back()
                        .orElseThrow()
                        .joined())
                .isFalse();
        assertThat(pattern(BACK.substring(0, BACK.indexOf("Back layer"))).back())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4.5 mm | 4.555 mm | 'mm', but expected the thickness of a hook, such as 4.5 mm",
                "4.5 mm | 1000001 mm | '1000001', but expected the thickness of a hook, such as 4.5 mm",
                "4.5 mm | 4.5 cm | 'cm', but expected the thickness of a hook, such as 4.5 mm",
                "tr in every stitch between the corners; corner: 2 tr, 2 ch, 2 tr | work as back round 3 | '3', but expected the number of a back round before round 2",
                "Back round 2. | Back round 3. | '3', but expected 'Back round 2'",
                "2 ch, 2 tr | 2 ch, 3 tr | '3', but expected 2, as many stitches as before the chains",
                "2 ch, 2 tr | 2 ch, 2 dc | 'dc', but expected 'tr', the stitch of this round",
                "2 ch, 2 tr | 4 ch, 2 tr | '4', but expected 1, 2 or 3 chains",
                "2 ch, 2 tr | 2 tr | 'tr', but expected 'ch'",
                "tr in every | htr in every | 'htr', but expected 'tr' or 'dc'",
                "tr in every stitch between | tr in every stitch betwixt | 'betwixt', but expected 'in every stitch between the corners'",
                "corner 1 dc | centre 1 dc | 'centre', but expected 'corner:' with its stitches and chains",
                "on all four sides. | twice. | 'Work', but expected the end of what is said of this round",
                "round: sl st | round: dc | 'dc', but expected 'sl st'",
                "both layers | one layer | 'one', but expected 'in every stitch and every corner chain, through the back loops of both layers'",
            })
    void aBackLayerThatDoesNotGoTogetherIsRefused(String right, String wrong, String problem) {
        assertThat(problems(BACK.replace(right, wrong)).get(0)).endsWith(problem);
    }

    @Test
    void chainsInASideAreReadWithTheStitchesThatAreMissed() {
        Run chains = new Run(2, Stitch.CHAIN);
        Group group = new Group(List.of(B1), 0);
        assertThat(rounds("UK terms\nRound 1, Peat: 1 dc blo, 2 ch, miss 2 sts; dc blo in every stitch; corner: 2 ch"))
                .containsExactly(round(List.of(B1, chains), group, List.of(), SideSize.unstated()));
        assertThat(rounds("US terms\nRound 1, Peat: 1 sc blo, ch two, skip two; sc blo in every stitch; corner: ch 2"))
                .containsExactly(round(List.of(B1, chains), group, List.of(), SideSize.unstated()));
    }

    @Test
    void theTermsAtTheHeadDecideWhatAWordMeans() {
        String text = " terms\nRound 1, Peat: 3 dc, 1 ch, %s 1 st, 3 dc; corner: 2 ch";
        assertThat(rounds("UK" + text.formatted("miss"))
                        .get(0)
                        .stretch()
                        .before()
                        .get(0))
                .isEqualTo(new Run(3, Stitch.PLAIN));
        assertThat(problems("US" + text.formatted("skip")))
                .containsExactly("line 2, column 18: 'dc', but expected a stitch in US terms: sc blo, sc, drop dc, ch");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"UK terms", "Written in UK crochet terms.", "Terms: UK", "(uk terminology)", "British terms"})
    void theTermsAreNamedInManyWays(String terms) {
        assertThat(pattern("Tide Ladder\n" + terms + "\nRound 1, Peat: 1 dc; corner: 2 ch")
                        .terms())
                .isEqualTo(Terms.UK);
    }

    @Test
    void titleDesignerYarnsAndNotesAreReadFromTheHead() {
        Instructions read = pattern("""
                Tide Ladder
                by Saltmarsh Studio

                UK terms

                You will need
                Yarn A: Peat
                Yarn B = Chalk, 4 ply
                A hook.

                Designer's notes
                Block it
                square.

                Base round: multiple of 4 plus 3 (7, 11); corner: 2 ch

                Round 1, Chalk, 4 ply: dc in every stitch; corner: 2 ch
                """.replace("Base round", "Set-up:\nBase round"));
        assertThat(read)
                .isEqualTo(new Instructions(
                        "Tide Ladder",
                        "Saltmarsh Studio",
                        List.of("Block it", "square."),
                        false,
                        Terms.UK,
                        Counting.STITCHES,
                        List.of(new PatternYarn("A", "Peat"), new PatternYarn("B", "Chalk, 4 ply")),
                        new BaseRound(
                                SideSize.of(new Multiple(4, 3, List.of(7, 11))),
                                OptionalInt.empty(),
                                OptionalInt.of(2)),
                        List.of(new WrittenRound.AtCorner(
                                1,
                                "B",
                                SideSize.unstated(),
                                SideInstructions.of(
                                        List.of(), new Group(List.of(new Run(1, Stitch.PLAIN)), 0), List.of()),
                                2))));
    }

    @Test
    void yarnsThatAreNotListedGetLettersInTheOrderOfTheRounds() {
        Instructions read = pattern("""
                UK terms
                Round 1, Peat: dc in every stitch; corner: 2 ch
                Round 2, Chalk: dc in every stitch; corner: 2 ch
                Round 3, peat: dc in every stitch; corner: 2 ch
                """);
        assertThat(read.yarns()).containsExactly(new PatternYarn("A", "Peat"), new PatternYarn("B", "Chalk"));
        assertThat(read.rounds()).extracting(WrittenRound::yarn).containsExactly("A", "B", "A");
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3})
    void aCornerHasOneToThreeChains(int chains) {
        assertThat(rounds("UK terms\nRound 1, Peat: 1 dc; corner: " + chains + " ch")
                        .get(0)
                        .cornerChains())
                .isEqualTo(chains);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Base round. Side: multiple of 4 plus 3 (23), at least 7; with one corner chain at each end: plus 1 (25), at least 9. | 4 3 [23] 7",
                "Base round. Side, with one corner chain at each end: multiple of 4 plus 1, at least 9. | 4 3 [] 7",
                "Base round: multiple of 4 plus 3; with one corner chain at each end: plus 1 (25), at least 9 | 4 3 [23] 7",
                "Base round. Side: multiple of 4 plus 3, at least 0; corner: 2 ch | 4 3 [] 0",
            })
    void theBaseRoundMaySayTheFewestStitches(String typed, String said) {
        BaseRound base = pattern("UK terms\n" + typed + "\n\nRound 1, Peat: 1 dc; corner: 2 ch")
                .base();
        Multiple multiple = base.side().multiple().orElseThrow();
        assertThat("%d %d %s %d"
                        .formatted(
                                multiple.of(),
                                multiple.plus(),
                                multiple.examples(),
                                base.fewest().orElseThrow()))
                .isEqualTo(said);
    }

    @Test
    void theFewestStitchesMustAgreeInBothWaysOfCounting() {
        assertThat(problems(
                        "UK terms\nBase round. Side: multiple of 4 plus 3, at least 7; with one corner chain at each end: "
                                + "plus 1, at least 13.\n\nRound 1, Peat: 1 dc; corner: 2 ch"))
                .containsExactly("line 2, column 96: 'at', but expected 9, to agree with the other way of counting");
    }

    @Test
    void aSideWithItsTwoCornerChainsCountsTwoAtLeast() {
        String text =
                "UK terms\nRound 1, Peat. Each side: %d sts; with one corner chain at each end. 1 dc; corner: 2 ch";
        assertThat(rounds(text.formatted(2)).get(0).side().counts()).containsExactly(PerSide.all(0));
        assertThat(problems(text.formatted(1))).hasSize(1);
    }

    @Test
    void noTwoYarnsGetTheSameIdHoweverTheyAreNamed() {
        Instructions read = pattern("""
                UK terms
                Round 1, yarn B: dc in every stitch; corner: 2 ch
                Round 2, Peat: dc in every stitch; corner: 2 ch
                Round 3, Chalk: dc in every stitch; corner: 2 ch
                Round 4, yarn A: dc in every stitch; corner: 2 ch
                """);
        assertThat(read.yarns())
                .containsExactly(
                        new PatternYarn("B", ""),
                        new PatternYarn("A", "Peat"),
                        new PatternYarn("C", "Chalk"),
                        new PatternYarn("D", "yarn A"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "41 sts. | 41 41 41 41",
                "Side: 41 sts. | 41 41 41 41",
                "Each side: 43 sts, with one corner chain at each end. | 41 41 41 41",
                "Each side: 41 stitches; corner chains not counted (multiple of 4 plus 1). | 41 41 41 41",
                "Top and bottom 41 sts, left and right 57 sts; stitches only. | 41 57 41 57",
                "Left: 1, top: 2, right: 3, bottom: 4. | 2 1 4 3",
                "(41 sts) | 41 41 41 41",
                "(43 sts a side, with one corner chain at each end) | 41 41 41 41",
            })
    void countsAreReadAsStitchesOnEachSide(String typed, String counts) {
        List<WrittenRound> rounds = rounds("UK terms\nRound 1, Peat. " + typed + " dc in every stitch; corner: 2 ch");
        assertThat(rounds.get(0).side().counts().get(0).stream())
                .isEqualTo(List.of(counts.split(" ")).stream()
                        .map(Integer::valueOf)
                        .toList());
    }

    @Test
    void countsMayStandAtTheEndOfARound() {
        assertThat(rounds("UK terms\nRound 1, Peat: dc in every stitch; corner: 2 ch. (41 sts)")
                        .get(0)
                        .side()
                        .counts())
                .containsExactly(PerSide.all(41));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Side: multiple of 4 plus 1 (29, 41); with one corner chain at each end: plus 3 (31, 43). | 4 1 [29, 41]",
                "Side, with one corner chain at each end: multiple of 4 plus 3 (31, 43). | 4 1 [29, 41]",
                "Multiple of 4 + 1. | 4 1 []",
                "Side: a multiple of 4 plus 5. | 4 1 []",
                "Side: multiple of 4 plus 2; with one corner chain at each end: multiple of 4 (32). | 4 2 [30]",
                "Side: any number. | 1 0 []",
            })
    void multiplesAreReadInEitherWayOfCounting(String typed, String multiple) {
        Multiple read = rounds("UK terms\nRound 1, Peat. " + typed + " dc in every stitch; corner: 2 ch")
                .get(0)
                .side()
                .multiple()
                .orElseThrow();
        assertThat(read.of() + " " + read.plus() + " " + read.examples()).isEqualTo(multiple);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "1 dc blo, 2 dc bloo; corner: 2 ch | 16 | bloo | a stitch in UK terms: dc blo, dc, drop tr, ch",
                "1 sc blo; corner: 2 ch | 3 | sc | a stitch in UK terms: dc blo, dc, drop tr, ch",
                "2 drop dc; corner: 2 ch | 8 | dc | a stitch in UK terms: dc blo, dc, drop tr, ch",
                "1 dc blo, 3 htr; corner: 2 ch | 13 | htr | a stitch in UK terms: dc blo, dc, drop tr, ch",
                "dc blo, 3 dc; corner: 2 ch | 7 | , | 'in every st', or else a number before the stitch",
                "1 dc; 1 drop tr; repeat from * to the last 2 sts; 2 dc; corner: 2 ch | 18 | repeat | an asterisk earlier in the round",
                "1 dc; *1 drop tr, 1 dc; corner: 2 ch | 25 | corner | a number and a stitch, or 'rep from *'",
                "*1 dc; repeat from * to the last 2; 2 dc; corner: 2 ch | 35 | ; | 'st' or 'sts'",
                "*1 dc; repeat from * 3 times; corner: 2 ch | 22 | 3 | 'to last ... sts' or 'to corner'",
                "*1 dc; repeat from * to the last 0 sts; corner: 2 ch | 34 | 0 | a number from 1 to 999999999",
                "*1 dc; repeat from 1 to the corner; corner: 2 ch | 20 | 1 | an asterisk",
                "*1 dc; repeat from * to the corner; *1 dc; corner: 2 ch | 37 | * | no second asterisk in a round",
                "dc in every stitch; dc in every stitch; corner: 2 ch | 21 | dc | no second asterisk in a round",
                "0 dc; corner: 2 ch | 1 | 0 | a number from 1 to 999999999",
                "1 ch, skip 1 st; corner: 2 ch | 7 | skip | 'miss' and as many stitches as there are chains",
                "2 ch, miss 1 st; corner: 2 ch | 12 | 1 | 2, as many stitches as there are chains",
                "1 dc; corner: 4 ch | 15 | 4 | 1, 2 or 3 chains",
                "1 dc; corner: 2 dc | 17 | dc | 'ch'",
                "corner: 2 ch | 1 | corner | some stitches before the corner",
                "1 dc; corner: 2 ch; 1 dc | 21 | 1 | 'Round 2' or the end of the rounds",
                "thirteen dc; corner: 2 ch | 1 | thirteen | a stitch in UK terms: dc blo, dc, drop tr, ch",
                "Side: multiple of 4 plus 1 (29, 42). 1 dc; corner: 2 ch | 33 | 42 | a multiple of 4 plus 1",
                "Side: multiple of 4 plus 1; with one corner chain at each end: plus 2. 1 dc; corner: 2 ch | 64 | plus | a multiple of 4 plus 3",
                "Side: multiple of 4 plus 1 (29); with one corner chain at each end: plus 3 (35). 1 dc; corner: 2 ch | 76 | ( | 31, to agree with the other way of counting",
                "Side: many. 1 dc; corner: 2 ch | 7 | many | 'multiple of' or 'any number'",
                "Top: 4 sts, left: 5 sts. 1 dc; corner: 2 ch | 24 | . | the stitches of all four sides",
                "Top: 4, top: 5. 1 dc; corner: 2 ch | 9 | top | a side that has no number yet",
                "Each side: 4 sts. 1 dc; corner: 2 ch (4 sts) | 38 | ( | the counts of a round only once",
                "1 dc | 5 | - | a number and a stitch, an asterisk, or 'corner'",
            })
    void aWordThatIsNotUnderstoodIsRefusedWithItsPlace(String typed, int column, String found, String expected) {
        ReadingResult.Refused refused =
                (ReadingResult.Refused) PatternReader.read("UK terms\nRound 1, Peat:\n" + typed, English.LANGUAGE);
        assertThat(refused.problems())
                .containsExactly(new ReadingProblem(3, column, found.equals("-") ? "" : found, expected));
    }

    @Test
    void everyRoundThatIsNotUnderstoodIsNamedOnce() {
        assertThat(problems("""
                UK terms
                Round 1, Peat: 1 sc; corner: 2 ch
                Round 2, Peat: 1 dc; corner: 2 ch
                Round 4, Peat: 1 dc; corner: 2 ch
                Round 5, Peat: 1 dc; corner: 2 ch
                Fasten off.
                """))
                .containsExactly(
                        "line 2, column 18: 'sc', but expected a stitch in UK terms: dc blo, dc, drop tr, ch",
                        "line 4, column 7: '4', but expected 'Round 3'",
                        "line 6, column 1: 'Fasten', but expected 'Round 6' or the end of the rounds");
    }

    @Test
    void withoutTermsNothingIsRead() {
        assertThat(problems("Tide Ladder\n\nRound 1, Peat: 1 dc; corner: 2 ch"))
                .containsExactly(
                        "line 3, column 34: nothing follows, but expected the terms of the pattern: 'UK terms' or 'US terms'");
        assertThat(problems("")).hasSize(1);
    }

    @Test
    void twoKindsOfTermsAtTheHeadAreRefused() {
        assertThat(problems("UK terms, not US terms\nRound 1, Peat: 1 dc; corner: 2 ch"))
                .containsExactly(
                        "line 1, column 15: 'US', but expected only one kind of terms, since the pattern says 'UK terms' before");
    }

    @Test
    void aPatternWithoutRoundsIsRefused() {
        assertThat(problems("UK terms")).containsExactly("line 1, column 9: nothing follows, but expected 'Round 1'");
    }

    @Test
    void aYarnThatIsNotInTheListIsRefused() {
        assertThat(problems("UK terms\nYarn A: Peat\nYarn B: Chalk\nRound 1, Sand: 1 dc; corner: 2 ch"))
                .containsExactly("line 4, column 10: 'Sand', but expected one of the yarns: Peat, Chalk");
    }

    @Test
    void aPatternThatSomebodyBrokeIntoOtherLinesIsReadAsBefore() {
        Chart chart = TestCharts.TIDE_LADDER.withNotes("");
        WordingOptions options = WordingOptions.of(chart, English.LANGUAGE).withRepeats(PerSide.all(3));
        String text = PlainText.of(PatternWriter.write(chart, options));
        String windows = text.replace("\n", "\r\n");
        String narrow = text.replace(", ", ",\n").replace("; ", ";\n");
        for (String other : List.of(windows, "\uFEFF" + text, narrow, text.strip())) {
            assertThat(PatternReader.read(other, English.LANGUAGE))
                    .isEqualTo(new ReadingResult.Understood(PatternWriter.tree(chart, options)));
        }
    }

    private static WrittenRound round(List<Run> before, Group group, List<Run> after, SideSize side) {
        return new WrittenRound.AtCorner(1, "A", side, SideInstructions.of(before, group, after), 2);
    }

    private static Instructions pattern(String text) {
        return ((ReadingResult.Understood) PatternReader.read(text, English.LANGUAGE)).pattern();
    }

    private static List<WrittenRound> rounds(String text) {
        return pattern(text).rounds();
    }

    private static List<String> problems(String text) {
        return ((ReadingResult.Refused) PatternReader.read(text, English.LANGUAGE))
                .problems().stream()
                        .map(problem -> problem.sentence(English.LANGUAGE))
                        .toList();
    }
}
