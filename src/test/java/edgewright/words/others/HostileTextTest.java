package edgewright.words.others;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import edgewright.chart.PerSide;
import edgewright.texts.English;
import java.io.IOException;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing in a text may make the reader throw, or work without end. */
class HostileTextTest {
    private static OthersReading read(String text) {
        return OthersReader.read(text, English.LANGUAGE, Optional.empty(), Optional.of(PerSide.all(9)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "\n\n",
                "UK terms",
                "UK terms\nRound 1 (A): (1 dc) x 999999999, 2 ch.",
                "UK terms\nRound 1 (A): ((((((((1 dc) twice) twice) twice) twice) twice) twice) twice) twice.",
                "UK terms\nRounds 1-999999999 (A): dc in each st, 2 ch at corner.",
                "UK terms\nRound 1 (A): dc in each st, 2 ch at corner.\nRepeat round 1 999999 times.",
                "UK terms\nRound 99999999999999999999 (A): 11 dc, 2 ch at corner.",
                "UK terms\nRound 1 (A): 999999 dc, 999999 dc, [999999 dc] 99999 times, 2 ch at corner.",
                "UK terms\nRound 3-2 (A): 1 dc",
                "UK terms\nRound 2 (A): as round 2.",
                "UK terms\nRound 1 (A): as round 5.",
                "UK terms\nRound 1 (A): * * * ** ] ) } rep from rep from * to",
                "UK terms\nLT = LT\nRound 1 (A): 11 LT, 2 ch at corner.",
                "UK terms\nMultiple of 0 plus 7\nRound 1 (A): 11 dc, 2 ch at corner."
            })
    void aTextThatAsksForTooMuchIsRefusedInASentence(String text) {
        OthersReading reading = read(text);
        assertThat(reading.isClear()).isFalse();
        assertThat(reading.remarks())
                .allSatisfy(
                        remark -> assertThat(remark.sentence(English.LANGUAGE)).startsWith("line "));
    }

    @Test
    void textsOfTheDrawerWithPiecesCutOutOrDoubledNeverThrow() throws IOException {
        Random random = new Random(11);
        for (DrawerText text : DrawerText.all()) {
            for (int i = 0; i < 15; i++) {
                int from = random.nextInt(text.text().length());
                int to = Math.min(text.text().length(), from + random.nextInt(40));
                String cut = text.text().substring(0, from) + text.text().substring(to);
                String doubled = text.text().substring(0, to) + text.text().substring(from);
                assertThatCode(() -> read(cut)).as(cut).doesNotThrowAnyException();
                assertThatCode(() -> read(doubled)).as(doubled).doesNotThrowAnyException();
            }
        }
    }
}
