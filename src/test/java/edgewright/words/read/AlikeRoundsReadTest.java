package edgewright.words.read;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.PerSide;
import edgewright.chart.Side;
import edgewright.chart.Stitch;
import edgewright.texts.English;
import edgewright.words.tree.Group;
import edgewright.words.tree.Instructions;
import edgewright.words.tree.Run;
import edgewright.words.tree.SideInstructions;
import edgewright.words.tree.SideSize;
import edgewright.words.tree.StartMark;
import edgewright.words.tree.WrittenRound;
import edgewright.words.tree.WrittenStart;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Rounds that are worked alike stand under one title, or refer to one that is told before. */
class AlikeRoundsReadTest {
    private static final String HEAD = "UK terms\nYarn A: Peat\nYarn B: Chalk\n\n";
    private static final String MARKER =
            "Set-up\nBase round: corner: 2 ch.\nMarker: left edge, stitch 6 of the base round (the corner "
                    + "chain is 1).\nRounds\n";
    private static final SideInstructions PLAIN =
            SideInstructions.of(List.of(), new Group(List.of(new Run(1, Stitch.PLAIN)), 0), List.of());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Rounds 1 and 2 (Peat, Chalk): dc in every st; corner: 2 ch. 45 sts; 47 sts.",
                "Rnds 1 & 2, A, B. dc in each st, corner: ch 2. 45 stitches, 47 stitches",
                "ROUNDS ONE AND TWO (PEAT, CHALK) 45 STS, 47 STS. DC IN EVERY STITCH; CORNER 2 CH",
            })
    void twoRoundsStandTogether(String typed) {
        WrittenRound.AtCorner first = new WrittenRound.AtCorner(1, "A", size(45), PLAIN, 2);
        assertThat(rounds(typed)).containsExactly(first, new WrittenRound.AsRound(2, "B", size(47), first));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Rounds 1 to 4 (Peat, Chalk in turn): dc in every st; corner: 2 ch. 45 sts in round 1, then 2 more on every side "
                        + "in each round.",
                "Rounds 1 - 4, yarn A, yarn B, yarn A, yarn B: dc in every st; corner: 2 ch. 45 sts; 47 sts; 49 sts; 51 sts.",
                "Rnds 1–4 (A, B by turns). 45 sts in rnd 1, then 2 more on each side in every round. dc in every st; corner: 2 ch",
            })
    void moreRoundsStandTogetherWithTheirYarnsInTurn(String typed) {
        WrittenRound.AtCorner first = new WrittenRound.AtCorner(1, "A", size(45), PLAIN, 2);
        assertThat(rounds(typed))
                .containsExactly(
                        first,
                        new WrittenRound.AsRound(2, "B", size(47), first),
                        new WrittenRound.AsRound(3, "A", size(49), first),
                        new WrittenRound.AsRound(4, "B", size(51), first));
    }

    @Test
    void yarnsThatAreNotListedAreNamedInATitleToo() {
        String text = "UK terms\nRounds 1 to 4 (Peat, Chalk in turn): dc in every st; corner: 2 ch.\n"
                + "Round 5 (Chalk): as round 1.";
        assertThat(pattern(text).rounds().stream().map(WrittenRound::yarn)).containsExactly("A", "B", "A", "B", "B");
        assertThat(pattern(text).yarns().stream().map(yarn -> yarn.name())).containsExactly("Peat", "Chalk");
    }

    @ParameterizedTest
    @ValueSource(strings = {"as round 1.", "work as rnd 1", "same as round one", "as round 2"})
    void aLaterRoundIsWorkedAsOneBefore(String typed) {
        WrittenRound.AtCorner first = new WrittenRound.AtCorner(1, "A", SideSize.unstated(), PLAIN, 2);
        assertThat(rounds("Rounds 1 and 2 (Peat): dc in every st; corner: 2 ch.\nRound 3 (Peat): 1 dc; corner: 2 ch.\n"
                        + "Round 4 (Chalk): " + typed + "\n61 sts."))
                .contains(new WrittenRound.AsRound(4, "B", size(61), first));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Rounds 1 | Rounds 2 | 8: '2', but expected 'Round 1'",
                "to 4 | to 1 | 13: '1', but expected the last of these rounds, 2 or a later one up to which they are alike",
                "to 4 | to 2001 | 13: '2001', but expected the last of these rounds, 2 or a later one up to which they are alike",
                "to 4 | and 3 | 14: '3', but expected the last of these rounds, 2 or a later one up to which they are alike",
                "to 4 | to 3 | 16: 'Peat', but expected one yarn, 3 yarns, or some that come in turn at least twice",
                "in turn) | ) | 16: 'Peat', but expected one yarn, 4 yarns, or some that come in turn at least twice",
                "Chalk in | Sand in | 22: 'Sand', but expected a stitch in UK terms: dc blo, dc, drop tr, ch",
                "in round 1 | in round 2 | 84: '2', but expected 1, the first of these rounds",
                "2 more | 0 more | 92: '0', but expected a number from 1 to 999999999",
                "more on every side in each round | over | 94: 'over', but expected 'more on every side in each round'",
                " in round 1, then 2 more on every side in each round | ; 47 sts | 83: '.', but expected the counts of each of the 4 rounds",
            })
    void aNumberThatDoesNotGoWithTheOthersIsRefusedAtItsPlace(String right, String wrong, String problem) {
        String text = "Rounds 1 to 4 (Peat, Chalk in turn): dc in every st; corner: 2 ch. 45 sts in round 1, "
                + "then 2 more on every side in each round.";
        assertThat(text).contains(right);
        assertThat(problems(text.replace(right, wrong))).containsExactly("line 5, column " + problem);
    }

    @ParameterizedTest
    @CsvSource({"4, 4", "5, 5", "0, 0", "3, 3"})
    void onlyARoundBeforeThatIsWorkedAlikeOnAllSidesCanBeMeant(String named, String found) {
        String changed = "Round 3 (Peat): Along the top, from the corner: 4 dc; corner: 2 ch. Along the left, from the "
                + "corner: 4 dc; corner: 2 ch. Along the bottom, from the corner: 4 dc; corner: 2 ch. Along the right, from the "
                + "corner: 4 dc; corner: 2 ch.\n";
        String text = "Rounds 1 and 2 (Peat): dc in every st; corner: 2 ch.\n" + changed + "Round 4 (Peat): as round ";
        String expected = named.equals("0")
                ? "a number from 1 to 999999999"
                : "a round before round 4 that is worked alike on all sides and begins where this one does: at a corner, or above a "
                        + "marker";
        assertThat(problems(text + named + "."))
                .containsExactly("line 7, column 26: '" + found + "', but expected " + expected);
    }

    @Test
    void aRoundAsOneThatCannotBeReadIsNoSecondProblem() {
        assertThat(
                        problems(
                                "Round 1 (Peat): 1 knot; corner: 2 ch.\nRounds 2 and 3 (Peat): as round 1.\nRound 4 (Peat): as round 2."))
                .hasSize(1);
    }

    @Test
    void roundsAboveAMarkerStandTogetherAndReferToOneAnother() {
        WrittenRound.AlongSide first = new WrittenRound.AlongSide(1, "A", size(45), PLAIN, 2, start(6));
        WrittenRound.AlongSide third = new WrittenRound.AlongSide(3, "A", SideSize.unstated(), PLAIN, 2, start(9));
        assertThat(rounds(MARKER + "Rounds 1 and 2 (Peat): dc in every st; corner: 2 ch. 45 sts; 47 sts.\n"
                        + "Rounds 3 and 4 (Peat): Start 1 st after the marker. dc in every st; corner: 2 ch.\n"
                        + "Round 5 (Chalk): as round 2. 53 sts.\n"
                        + "Round 6 (Chalk): Start 2 sts after the marker. As round 3."))
                .containsExactly(
                        first,
                        new WrittenRound.AsRound(2, "A", size(47), first, Optional.of(start(7))),
                        third,
                        new WrittenRound.AsRound(4, "A", SideSize.unstated(), third, Optional.of(start(10))),
                        new WrittenRound.AsRound(5, "B", size(53), first, Optional.of(start(10))),
                        new WrittenRound.AsRound(6, "B", SideSize.unstated(), third, Optional.of(start(13))));
    }

    @Test
    void aRoundAsOneBeforeBeginsWhereThatOneDoes() {
        String corner = MARKER + "Rounds 1 and 2 (Peat): Begin at a corner. dc in every st; corner: 2 ch.\n";
        WrittenRound.AtCorner first = new WrittenRound.AtCorner(1, "A", SideSize.unstated(), PLAIN, 2);
        assertThat(rounds(corner + "Round 3 (Peat): Begin at a corner. As round 2."))
                .contains(new WrittenRound.AsRound(3, "A", SideSize.unstated(), first));
        String expected =
                "'2', but expected a round before round 3 that is worked alike on all sides and begins where this one "
                        + "does: at a corner, or above a marker";
        assertThat(problems(corner + "Round 3 (Peat): as round 2.")).containsExactly("line 10, column 26: " + expected);
        assertThat(problems(MARKER + "Rounds 1 and 2 (Peat): dc in every st; corner: 2 ch.\n"
                        + "Round 3 (Peat): Begin at a corner. As round 2."))
                .containsExactly("line 10, column 45: " + expected);
    }

    @Test
    void roundsOfOneTitleAllBeginAboveMarkersOrAllAtACorner() {
        String inRoundOne = MARKER.replace("of the base round", "of round 1");
        assertThat(problems(inRoundOne + "Rounds 1 to 3 (Peat): dc in every st; corner: 2 ch."))
                .containsExactly(
                        "line 9, column 23: 'dc', but expected 'Begin at a corner', since the marker is put in one of "
                                + "these rounds");
        assertThat(rounds(inRoundOne + "Rounds 1 to 3 (Peat): Begin at a corner. dc in every st; corner: 2 ch."))
                .hasSize(3);
    }

    /** At the right of the marked stitch of the base round, so many stitches of the round below from the corner. */
    private static WrittenStart start(int stitch) {
        return new WrittenStart(Side.LEFT, stitch, new StartMark(StartMark.Part.GROUP, 0));
    }

    private static SideSize size(int stitches) {
        return SideSize.of(PerSide.all(stitches));
    }

    private static Instructions pattern(String text) {
        return ((ReadingResult.Understood) PatternReader.read(text, English.LANGUAGE)).pattern();
    }

    private static List<WrittenRound> rounds(String text) {
        return pattern(HEAD + text).rounds();
    }

    private static List<String> problems(String text) {
        return ((ReadingResult.Refused) PatternReader.read(HEAD + text, English.LANGUAGE))
                .problems().stream()
                        .map(problem -> problem.sentence(English.LANGUAGE))
                        .toList();
    }
}
