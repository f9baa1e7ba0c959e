package edgewright.words.read;

import static org.assertj.core.api.Assertions.assertThat;

import edgewright.texts.Languages;
import edgewright.words.SeededCharts;
import edgewright.words.page.PlainText;
import edgewright.words.write.PatternWriter;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Text that was damaged on its way is refused in an orderly manner, or it says something else in full. */
class DamagedTextTest {
    private static final String SIGNS = "*;:,.()=-+\n \t'12390abcdstr\u00a0\u00e9\u4e2d\ud83e\uddf6";

    @Test
    void whateverIsReadCanBeWrittenAndIsReadAgainAsTheSame() {
        int understood = 0;
        for (long seed = 0; seed < 3_000; seed++) {
            String text = damaged(seed);
            if (PatternReader.read(text, Languages.of(seed)) instanceof ReadingResult.Understood read) {
                understood++;
                String again = PlainText.of(PatternWriter.write(read.pattern(), Languages.of(seed)));
                assertThat(PatternReader.read(again, Languages.of(seed)))
                        .as("seed %d%n%s", seed, text)
                        .isEqualTo(read);
            }
        }
        // Both ways must have been gone, or the test says nothing.
        assertThat(understood).isBetween(300, 2_700);
    }

    @Test
    void aRefusalNamesAPlaceInTheText() {
        for (long seed = 0; seed < 3_000; seed++) {
            String text = damaged(seed);
            if (PatternReader.read(text, Languages.of(seed)) instanceof ReadingResult.Refused refused) {
                String[] lines = text.split("\n", -1);
                assertThat(refused.problems()).isNotEmpty().allSatisfy(problem -> {
                    String rest = lines[problem.line() - 1].substring(problem.column() - 1);
                    assertThat(rest).startsWith(problem.found());
                });
            }
        }
    }

    /** A written pattern with one to three signs taken out, put in or exchanged. */
    private static String damaged(long seed) {
        SeededCharts seeded = new SeededCharts(seed);
        StringBuilder text = new StringBuilder(PlainText.of(
                PatternWriter.write(seeded.workable(), seeded.options().withLanguage(Languages.of(seed)))));
        Random random = new Random(seed);
        for (int i = random.nextInt(3); i >= 0; i--) {
            int at = random.nextInt(text.length());
            String sign = SIGNS.substring(random.nextInt(SIGNS.length())).substring(0, 1);
            switch (random.nextInt(3)) {
                case 0 -> text.deleteCharAt(at);
                case 1 -> text.insert(at, sign);
                default -> text.replace(at, at + 1, sign);
            }
        }
        return text.toString();
    }
}
