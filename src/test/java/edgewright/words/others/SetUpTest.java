package edgewright.words.others;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.chart.PerSide;
import edgewright.texts.English;
import edgewright.words.tree.WrittenRound;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said once for all rounds, one thing after another or several in one sentence. */
class SetUpTest {
    private static final String ROUNDS = """

            Round 1 (A): 2 dc, *1 LT, 3 dc; rep from * to last 2 sts, 2 dc.
            Round 2 (B): dc in each st to corner.
            """;

    /** Each changes what the rounds make, or what is checked. */
    private static final List<String> STATEMENTS = List.of(
            "all dc are worked in the back loop only",
            "multiple of 4 plus 2 on each side",
            "2 ch at each corner",
            "corner chains are not counted",
            "base round: 10 sts on each side",
            "all four sides are alike",
            "LT = tr into the front loop of the st two rounds below");

    private static OthersReading read(String setUp) {
        String text = "Reed Hem\nUK terms\nYarns: A = Peat, B = Chalk\n" + setUp + ROUNDS;
        return OthersReader.read(text, English.LANGUAGE, Optional.empty(), Optional.of(PerSide.all(10)));
    }

    private static List<String> made(OthersReading reading) {
        List<String> made = new ArrayList<>();
        for (WrittenRound round : reading.pattern().orElseThrow().rounds()) {
            made.add(PerSide.each(side -> Sides.letters(round, side, 10 + 2 * round.number())) + " "
                    + round.cornerChains());
        }
        made.add(reading.sizes().toString());
        return made;
    }

    @Test
    void eachStatementIsReadOnALineOfItsOwn() {
        OthersReading reading = read(String.join(".\n", STATEMENTS) + ".");
        assertThat(reading.remarks()).isEmpty();
        assertThat(made(reading).get(0)).contains("bblbbblbbbbb");
    }

    @Test
    void whatIsSaidBesideSomethingElseInOneSentenceIsReadOrRefusedButNeverLost() {
        List<String> alone = made(read(String.join(".\n", STATEMENTS) + "."));
        int read = 0;
        for (String between : List.of(", ", "; ", " and ", " - ", " (", ": ")) {
            for (String one : STATEMENTS) {
                for (String other : STATEMENTS) {
                    if (one.equals(other)) {
                        continue;
                    }
                    List<String> rest = new ArrayList<>(STATEMENTS);
                    rest.removeAll(List.of(one, other));
                    String together = one + between + other + (between.equals(" (") ? ")." : ".");
                    OthersReading reading = read(together + "\n" + String.join(".\n", rest) + ".");
                    if (reading.isClear()) {
                        read++;
                        assertThat(made(reading)).as(together).isEqualTo(alone);
                    }
                }
            }
        }
        assertThat(read).isGreaterThan(100);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', textBlock = """
            Corner: 1 dc in the first ch, 2 ch, 1 dc in the second ch.       | true
            Corner: 2 dc in the first ch, 2 ch, 1 dc in the second ch.       | false
            Corner: 1 dc in the first ch, 2 ch, 2 dc in the second ch.       | false
            Corner: 1 dc in 1st ch, 2 ch, 1 dc in 2nd ch.                    | true
            Corner: 1 dc in 1st ch, 2 ch, 1 dc in 3rd ch.                    | false
            Corner: 1 dc in each of the two chains with 2 ch between.        | true
            Corner: 2 dc in each of the two chains with 2 ch between.        | false
            Corner: 1 dc in each of the 3 chains with 2 ch between.          | false
            """)
    void aCornerTakesOneStitchOnEitherSideOfItsChains(String corner, boolean read) {
        String text = "UK terms\n" + corner + " These dc are counted with the sides.\nRound 1 (A): 11 dc.\n";
        assertThat(OthersReader.read(text, English.LANGUAGE, Optional.empty(), Optional.of(PerSide.all(9)))
                        .isClear())
                .isEqualTo(read);
    }

    @Test
    void itIsAskedWhetherTheStitchesOfACornerAreAmongThoseOfTheSideWhereNothingTells() {
        String text =
                "UK terms\nCorner: (1 dc, 2 ch, 1 dc) in corner space.\nRound 1 (A): dc blo in each st to corner.\n";
        OthersReading reading =
                OthersReader.read(text, English.LANGUAGE, Optional.empty(), Optional.of(PerSide.all(9)));
        assertThat(reading.remarks())
                .singleElement()
                .satisfies(remark -> assertThat(remark.what()).isEqualTo("armsInSides"));
    }
}
