package edgewright.words.others;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.PerSide;
import edgewright.chart.Terms;
import edgewright.texts.English;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What one convention of published patterns means, told as the stitches of a side. The border stands on a base round of 9
 * stitches a side with corners of 2 chains, so a side of round 1 has 11. Where nothing else stands beside a row it is common
 * practice, no source; the forms of asterisks, brackets and counts are those of
 * https://www.crochet-world.com/standards_and_symbols.php and https://www.mooglyblog.com/crochet-pattern-symbols/ .
 */
class ConventionsTest {
    private static final PerSide<Integer> NINE = PerSide.all(9);

    private static OthersReading read(Terms terms, String rounds) {
        String tall = terms == Terms.UK ? "treble" : "double crochet";
        String text = "Reed Hem\n" + terms + " terms\nA: Peat, B: Chalk\nLT = " + tall
                + " into the front loop of the st two rounds below\n" + (ownCorner(rounds) ? "" : "Corner: 2 ch\n")
                + rounds.replace("\\n", "\n");
        return OthersReader.read(text, English.LANGUAGE, Optional.empty(), Optional.of(NINE));
    }

    /** Whether the words turn their corners otherwise than with the 2 chains of the others. */
    private static boolean ownCorner(String words) {
        return words.contains("ch 3") || words.contains("1 ch, 1 dc)");
    }

    /** The sides of all rounds, top first; one only where all four are alike. */
    private static String meaning(OthersReading reading) {
        if (reading.pattern().isEmpty() || !reading.remarks().isEmpty()) {
            return reading.remarks().stream()
                    .map(remark -> remark.kind() + " " + remark.column() + " " + remark.what())
                    .toList()
                    .toString();
        }
        List<String> rounds = new ArrayList<>();
        PerSide<Integer> base =
                reading.sizes().isEmpty() ? NINE : reading.sizes().get(0);
        for (WrittenRound round : reading.pattern().get().rounds()) {
            PerSide<String> sides =
                    PerSide.each(side -> Sides.letters(round, side, base.get(side) + 2 * round.number()));
            String chains = round.cornerChains() == 2 ? "" : " " + round.cornerChains();
            rounds.add(round.yarn() + " "
                    + (sides.allSidesAreAlike()
                            ? sides.top()
                            : String.join("/", sides.stream().toList())) + chains);
        }
        return String.join(", ", rounds);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Round 1 (A): dc blo in every st.                               | A bbbbbbbbbbb
            Rnd 1 (A): dc blo in each st to corner, 2 ch.                  | A bbbbbbbbbbb
            R1 (A): dc in each st across, ch 2 at corner.                  | A ppppppppppp
            Rd 1, A: dc blo in each stitch around.                         | A bbbbbbbbbbb
            ROUND 1 – with A: 11 dc blo, 2ch at corner                     | A bbbbbbbbbbb
            R1 (A) 11 dc                                                   | A ppppppppppp
            Round 1 in yarn A: 11 dc.                                      | A ppppppppppp
            Round 1 (Peat): 11 dc.                                         | A ppppppppppp
            Round 1: With A, 11 dc.                                        | A ppppppppppp
            Round 1: Join A in any corner ch-2 sp, 11 dc.                  | A ppppppppppp
            **Round 1 (A):** 11 dc.                                        | A ppppppppppp
            ### Round 1 (A)\\n11 dc.                                       | A ppppppppppp
            - Round 1 (A): 11 dc                                           | A ppppppppppp
            1. Round 1 (A): 11 dc                                          | A ppppppppppp
            Round 1 (A): 3 dc, 8 dc blo.                                   | A pppbbbbbbbb
            Round 1 (A): dc3, dcblo 8.                                     | A pppbbbbbbbb
            Round 1 (A): dc in next 3 sts, 8 BLO dc.                       | A pppbbbbbbbb
            Round 1 (A): 1 dc in each of next 3 sts, blo dc in next 8 sts. | A pppbbbbbbbb
            Round 1 (A): dc in each of the next 3 stitches, 8 dc in back loop only. | A pppbbbbbbbb
            Round 1 (A): 3 dc, then dc in the back loops only of the next 8 sts. | A pppbbbbbbbb
            Round 1 (A): three dc, eight dc through both loops.            | A ppppppppppp
            Round 1 (A): 3 dc, 1 dc in blo of each of next 8 sts.          | A pppbbbbbbbb
            Round 1 (A): dc x 3, dc blo × 8.                               | A pppbbbbbbbb
            Round 1 (A): In back loops only: dc in next 8 sts, 3 dc.       | A bbbbbbbbbbb
            Round 1 (A): 5 dc, 1 ch, miss 1 st, 5 dc.                      | A pppppcppppp
            Round 1 (A): 5 dc, ch 1, skip next st, 5 dc.                   | A pppppcppppp
            Round 1 (A): 4 dc, 2ch, sk 2 sts, 5 dc.                        | A ppppccppppp
            Round 1 (A): 4 dc, ch 2 and miss the next 2 sts, 5 dc.         | A ppppccppppp
            Round 1 (A): 2 dc, *1 dc blo, 1 dc; rep from * to last st, 1 dc. | A ppbpbpbpbpp
            Round 1 (A): 2 dc; *(1 dc blo, 1 dc); rep from * to last 1 st; 1 dc. | [REFUSED 37 times]
            Round 1 (A): 2 dc; *dc blo, dc; repeat from * until 3 sts remain; 3 dc. | A ppbpbpbpppp
            Round 1 (A): 2 dc, *1 dc blo, 1 dc* x 4, 1 dc.                 | A ppbpbpbpbpp
            Round 1 (A): 2 dc, *1 dc blo, 1 dc*, rep from * to * 3 more times, 1 dc. | A ppbpbpbpbpp
            Round 1 (A): 2 dc, *1 dc blo, 1 dc, rep from * 3 more times, 1 dc. | A ppbpbpbpbpp
            Round 1 (A): 2 dc, *1 dc blo, 1 dc, rep from * three times more, 1 dc. | A ppbpbpbpbpp
            Round 1 (A): 2 dc, [1 dc blo, 1 dc] 4 times, 1 dc.             | A ppbpbpbpbpp
            Round 1 (A): 2 dc, [1 dc blo, 1 dc] x 4, 1 dc.                 | A ppbpbpbpbpp
            Round 1 (A): 2 dc, (1 dc blo, 1 dc) twice, 5 dc.               | A ppbpbpppppp
            Round 1 (A): 1 dc, [(1 dc blo, 1 dc) twice, 1 dc] 2 times.     | A pbpbppbpbpp
            Round 1 (A): 1 dc, {1 dc blo, 1 dc} five times.                | A pbpbpbpbpbp
            Round 1 (A): 3 dc, dc blo in each st to last 3 sts, 3 dc.      | A pppbbbbbppp
            Round 1 (A): 3 dc, dc blo to last 3 sts, 3 dc.                 | A pppbbbbbppp
            Round 1 (A): 3 dc, dc blo in each st until 3 sts before corner, 3 dc. | A pppbbbbbppp
            Round 1 (A): 3 dc, dc blo to corner.                           | A pppbbbbbbbb
            Round 1 (A): *dc blo in each st to corner, (1 dc, 2 ch, 1 dc) in corner; rep from * around. | A pbbbbbbbbbp
            Round 1 (A): *dc blo in each st to next corner, [dc, ch 2, dc] in corner ch-2 sp; rep from * three more times. | A pbbbbbbbbbp
            Round 1 (A): *dc blo in each st to corner, (dc blo, ch 3, dc blo) in corner space* 4 times. | A bbbbbbbbbbb 3
            Round 1 (A): (1 dc, 2 ch, 1 dc) in corner, *dc blo in each st to corner, (1 dc, 2 ch, 1 dc) in corner; rep from * twice more, dc blo in each st to end. Join with sl st to first dc. | A pbbbbbbbbbp
            Round 1 (A): (1 dc, 1 ch, 1 dc) in corner, 9 dc blo. Repeat on all four sides. | A pbbbbbbbbbp 1
            Round 1 (A): 9 dc blo, (1 dc, 2 ch, 1 dc) in corner; repeat around. | A pbbbbbbbbbp
            Round 1 (A): 9 dc blo, in corner: 1 dc, 2 ch, 1 dc. All four sides alike. | A pbbbbbbbbbp
            Round 1 (A): dc blo in each st around, (1 dc, 2 ch, 1 dc) in each corner. | A pbbbbbbbbbp
            Round 1 (A): 1 dc in corner, 9 dc blo, 1 dc in corner, 2 ch.   | A pbbbbbbbbbp
            Round 1 (A): 11 dc, corner; all four sides alike.              | A ppppppppppp
            Round 1 (A): 11 dc, ch 3 for corner.                           | A ppppppppppp 3
            Round 1 (A): Top and bottom: 11 dc; left and right: 11 dc blo. | A ppppppppppp/bbbbbbbbbbb/ppppppppppp/bbbbbbbbbbb
            Round 1 (A): On top and bottom, [1 dc, 1 dc blo] 5 times, 1 dc, corner; on the left and right, 11 dc, corner. | A pbpbpbpbpbp/ppppppppppp/pbpbpbpbpbp/ppppppppppp
            Round 1 (A): Top edge: 11 dc. Left edge: 11 dc blo. Bottom edge: 11 dc. Right edge: 11 dc. | A ppppppppppp/bbbbbbbbbbb/ppppppppppp/ppppppppppp
            Round 1 (A): 11 dc. (11 sts)                                   | A ppppppppppp
            Round 1 (A): 11 dc = 11 sts                                    | A ppppppppppp
            Round 1 (A): 11 dc. [11]                                       | A ppppppppppp
            Round 1 (A): 11 dc. 11 sts.                                    | A ppppppppppp
            Round 1 (A): 11 dc – 11 sts each side                          | A ppppppppppp
            Round 1 (A): 11 dc. (44 sts in total)                          | A ppppppppppp
            Round 1 (A): 11 dc. (44 sts)                                   | A ppppppppppp
            Round 1 (A): 11 dc. (11 sts per side, 4 corners)               | A ppppppppppp
            Round 1 (A): 11 dc. (11, 11 sts)                               | A ppppppppppp
            Round 1 (A): 11 dc. (13 sts including corner chains)           | A ppppppppppp
            Rounds 1 and 2 (A, B): dc blo in every st. 11 sts; 13 sts.     | A bbbbbbbbbbb, B bbbbbbbbbbbbb
            Rnds 1-3 (A, B, A): dc blo in each st around.                  | A bbbbbbbbbbb, B bbbbbbbbbbbbb, A bbbbbbbbbbbbbbb
            Rounds 1 & 2: With A, dc blo in each st around.                | A bbbbbbbbbbb, A bbbbbbbbbbbbb
            Rounds 1 to 3 (alternating A and B): dc blo in each st around. | A bbbbbbbbbbb, B bbbbbbbbbbbbb, A bbbbbbbbbbbbbbb
            Round 1 (A): dc blo in every st.\\nRound 2 (B): as round 1.    | A bbbbbbbbbbb, B bbbbbbbbbbbbb
            Round 1 (A): dc blo in every st.\\nRound 2: As Round 1 with B. | A bbbbbbbbbbb, B bbbbbbbbbbbbb
            Round 1 (A): dc in every st.\\nRound 2 (B): dc blo in every st.\\nRepeat rounds 1 and 2. | A ppppppppppp, B bbbbbbbbbbbbb, A ppppppppppppppp, B bbbbbbbbbbbbbbbbb
            Round 1 (A): dc in every st.\\nRounds 2-3: repeat round 1.     | A ppppppppppp, A ppppppppppppp, A ppppppppppppppp
            Round 1 (A): dc in every st. Change to B.\\nRound 2: dc in every st. | A ppppppppppp, B ppppppppppppp
            Round 1 (A): dc in every st.\\nChange to B.\\nRound 2: dc in every st. | A ppppppppppp, B ppppppppppppp
            Round 1 (A): 5 dc, LT, 5 dc.                                   | A ppppplppppp
            Round 1 (A): 5 dc, LT 1, 5 dc.                                 | A ppppplppppp
            Round 1 (A): 5 dc, drop tr, 5 dc.                              | A ppppplppppp
            Round 1 (A): 5 dc, tr in front loop 2 rounds below, 5 dc.      | A ppppplppppp
            Round 1 (A): 5 dc, 1 tr in flo of st two rows below, 5 dc.     | A ppppplppppp
            Round 1 (A): 5 dc, 1 tr flo, 5 dc.                             | A ppppplppppp
            Round 1 (A): 5 dc, 1 long treble, 5 dc. Look how pretty it is! | A ppppplppppp
            Round 1 (A): 5 dc,\\n  1 dc blo, 5 dc.                         | A pppppbppppp
            R1 (A): 11 dc. R2 (B): 13 dc blo.                              | A ppppppppppp, B bbbbbbbbbbbbb
            Round 1 (A): 1 dc, *1 dc blo, *1 dc, 1 dc blo; rep from * once more, 1 dc; rep from * to last 4 sts, 4 dc. | A pbpbpbppppp
            Round 1 (A): 1 dc, *1 dc blo, *1 dc* 3 times, 1 dc blo; rep from * to corner. | A pbpppbbpppb
            Round 1 (A): 2 dc, *1 dc blo**, 2 dc; rep from * to corner, ending last rep at **, 2 dc. | A ppbppbppbpp
            Round 1 (A): 2 dc, *1 dc blo, 2 dc; rep from * to corner, ending last rep 2 dc. | A ppbppbppbpp
            Round 1 (A): 2 dc, *1 dc blo, 3 dc; rep from * to corner, ending last rep 4 dc. | A ppbpppbpppp
            Round 1 (A): 2 dc, *1 dc blo**, 2 dc; rep from * to corner.    | [REFUSED 29 endsAtMark]
            Round 1 (A): 2 dc, *1 dc blo, 2 dc; rep from * to corner, ending last rep at **, 2 dc. | [REFUSED 78 markInside]
            First Round. With A, 11 dc.                                    | A ppppppppppp
            1st round: A. 11 dc.                                           | A ppppppppppp
            Rounds 1-2: 1 round A, 1 round B, dc in every st.              | A ppppppppppp, B ppppppppppppp
            Rounds 1 and 2 (A, B): dc in every st. 11 sts after round 1 and 14 sts after round 2. | [FINDING 65 stitches]
            Rounds 1 and 2 (A, B): dc in every st. 11 sts after round 1 and 13 sts after round 2. | A ppppppppppp, B ppppppppppppp
            Round 1 (A): 11 dc. Each side now has 11 stitches after round 1. | A ppppppppppp
            Round 1 (A): 11 dc. Each side now has 11 stitches after round 2. | [REFUSED 63 roundOfCount]
            Round 1 (A): dc in every st.\\nRound 2 (B): as round 1. Each side has grown by two stitches since round 1. | A ppppppppppp, B ppppppppppppp
            Round 1 (A): dc in every st.\\nRound 2 (B): as round 1. Each side has grown by four stitches since round 1. | [FINDING 49 stitches]
            Round 1 (A): 11 dc. If you have 12 you have worked one too many. | A ppppppppppp
            Round 1 (A): 11 dc. Have you seen how the long stitches stand? | A ppppppppppp
            Round 1 (A): 11 dc.\\nRound 2 looks odd until round 3 is done. | [REFUSED 7 wordsOfRound]
            Round 1 (A): 11 dc and fasten off and darn in the ends.        | A ppppppppppp
            Round 1 (A): 11 dc, and you are done, my love.                 | A ppppppppppp
            """)
    void aConventionMeansTheseStitches(String words, String meaning) {
        assertThat(meaning(read(Terms.UK, words))).isEqualTo(meaning);
    }
}
